"""Benches for the tests of the live page's processes: made inside a process, so they are functions of a light module."""

from __future__ import annotations

import os
import time

from routeviz.errors import LimitError


def echoing():
    return lambda job, say: (say("heard", job), job * 2)[1]


def sleeping():
    def work(job, say):
        say("begun", os.getpid())
        time.sleep(job)
        return job

    return work


def dying():
    return lambda job, say: os._exit(3)


def faulty():
    def work(job, say):
        if job == "known":
            raise LimitError("too large for this machine")
        raise ZeroDivisionError("by hand")

    return work
