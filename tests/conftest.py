"""What all tests stand on."""

from __future__ import annotations

import signal

if signal.getsignal(signal.SIGINT) is signal.SIG_IGN:  # begun in the background by a shell, as some runners do
    signal.signal(signal.SIGINT, signal.default_int_handler)
