"""What the second line says of each kind of thing in the way."""

from __future__ import annotations

import pytest
import samples

from routeviz.model.path import Blocker, Outcome, Paths, SearchFacts, WhyNot
from routeviz.pipeline.answer import second_line

FACTS = SearchFacts((1, 1, 1), 1, 3, 0.0)


@pytest.mark.parametrize(
    ("blocker", "said"),
    [
        (Blocker("storey", "room above", 0.0, (0, 0, 0), "zone"), "Not straight up: the room above is in the way."),
        (Blocker("above", "the flat above", 0.0, (0, 0, 0), "zone"), "Not straight up: the flat above is in the way."),
        (Blocker("", "there is no roof to leave through", 0.0, (0, 0, 0), "zone"),
         "Not straight up: there is no roof to leave through."),
        (Blocker("joist-4", "joist 4", 1.5, (0, 0, 0), "solid"), "Not straight up: joist 4 is 1 1/2 in into the duct."),
        (Blocker("joist-4", "joist 4", 0.0, (0, 0, 0), "solid"), "Not straight up: joist 4 is too close to the duct."),
        (Blocker("window", "side window", 20.25, (0, 0, 0), "keep-out"),
         "Not straight up: side window is 20 1/4 in too near for a cap."),
        (Blocker("lot-line-hood", "lot line", 34.2, (0, 0, 0), "keep-out"),
         "Not straight up: the lot line is too near for a cap."),
    ],
)  # fmt: skip
def test_the_reason_reads_as_a_sentence(blocker: Blocker, said: str) -> None:
    first = WhyNot(
        "straight back", (Blocker("stud-2", "stud 2", 1.0, (0, 0, 0), "solid"),), 4.0, None, None, verified=True
    )
    paths = Paths(
        Outcome.NONE_EXISTS, None, (), (), (first, WhyNot("straight up", (blocker,), None, None, None)), FACTS
    )
    assert said in second_line(samples.scene(), paths, ())
