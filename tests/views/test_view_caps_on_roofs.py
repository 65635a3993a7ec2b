"""A roof cap stands on the roof: its flashing on the covering, its neck as high as the duct ends."""

from __future__ import annotations

import numpy as np
import pytest
import samples

from routeviz.pipeline import plan
from routeviz.views.caps import cap_pieces, cap_top


def test_cap_stands_on_the_roof_and_not_one_stub_above_it() -> None:
    planned = plan(samples.scene())
    assert planned.best is not None
    route = planned.best.route
    face = next(f for f in planned.frame.faces if f.id == route.termination.face)
    x, y, end = route.termination.point
    roof = face.plane[0] + face.plane[1] * x + face.plane[2] * y
    stub = planned.scene.cap.roof_stub_in
    assert end == pytest.approx(roof + stub)
    pieces = cap_pieces(planned, route)
    plate, neck = pieces[0].mesh, pieces[2].mesh
    off = np.asarray(plate.vertices) - [0.0, 0.0, face.plane[0]]
    above = off[:, 2] - face.plane[1] * off[:, 0] - face.plane[2] * off[:, 1]
    assert 0.0 < above.min() < above.max() < 1.0  # the flashing lies on the covering
    assert neck.bounds[1][2] == pytest.approx(end)
    assert end < max(p.mesh.bounds[1][2] for p in pieces) <= cap_top(planned, route)
