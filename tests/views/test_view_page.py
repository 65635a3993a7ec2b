"""The page: one file, nothing from outside, safe with any words, small, fresh."""

from __future__ import annotations

import base64
import hashlib
import html.parser
import json
import re
from dataclasses import replace

import pytest
import view_plans

from routeviz.model.finding import Verdict
from routeviz.model.study import Fix, FixKind
from routeviz.views import page
from routeviz.views.web import build as recipe

LIMIT_BYTES = 3_000_000


class Reader(html.parser.HTMLParser):
    """Collect tags, their attributes, and the text of each script."""

    def __init__(self) -> None:
        super().__init__(convert_charrefs=True)
        self.tags: list[tuple[str, dict[str, str | None]]] = []
        self.scripts: list[tuple[dict[str, str | None], str]] = []
        self.title = ""
        self._in = ""

    def handle_starttag(self, tag, attrs):
        self.tags.append((tag, dict(attrs)))
        self._in = tag
        if tag == "script":
            self.scripts.append((dict(attrs), ""))

    def handle_endtag(self, tag):
        self._in = ""

    def handle_data(self, data):
        if self._in == "script":
            attrs, text = self.scripts[-1]
            self.scripts[-1] = (attrs, text + data)
        elif self._in == "title":
            self.title += data


def read(text: str) -> Reader:
    reader = Reader()
    reader.feed(text)
    return reader


def data_of(text: str) -> dict:
    return json.loads(next(t for a, t in read(text).scripts if a.get("id") == "data"))


@pytest.fixture(scope="module")
def text() -> str:
    return page.compose(view_plans.plan(), wall_map=view_plans.wall_map())


def test_the_page_is_one_small_file(tmp_path, text):
    target = page.write(view_plans.plan(), tmp_path / "p.html", wall_map=view_plans.wall_map())
    assert [f.name for f in tmp_path.iterdir()] == ["p.html"]
    assert target.read_text(encoding="utf-8") == text
    assert target.stat().st_size < LIMIT_BYTES


def test_the_same_plan_gives_the_same_page(text):
    assert page.compose(view_plans.plan(), wall_map=view_plans.wall_map()) == text


def test_nothing_is_loaded_from_outside(text):
    reader = read(text)
    for tag, attributes in reader.tags:
        for name in ("src", "href", "srcset", "action", "data", "poster"):
            value = attributes.get(name)
            assert value is None or value.startswith(("#", "data:")), (tag, name, value)
    assert not any(tag in ("link", "iframe", "object", "embed", "base") for tag, _ in reader.tags)
    style = re.search(r"<style>(.*?)</style>", text, re.DOTALL)
    assert style is not None
    assert all(u.startswith(("data:", "#")) for u in re.findall(r"url\(([^)]*)\)", style[1]))
    assert "@import" not in style[1]
    # the script names the XHTML namespace, which is a name and not a place to load from
    assert set(re.findall(r"https?://[^\"'\s)<>\\]+", text)) <= {
        "http://www.w3.org/1999/xhtml",
        "http://www.w3.org/2000/svg",
    }


def test_the_pages_own_policy_allows_its_script_and_nothing_else(text):
    reader = read(text)
    policy = next(
        a["content"] for t, a in reader.tags if t == "meta" and a.get("http-equiv") == "Content-Security-Policy"
    )
    assert policy is not None
    assert policy.startswith("default-src 'none';")
    script = next(t for a, t in reader.scripts if not a)
    digest = base64.b64encode(hashlib.sha256(script.encode()).digest()).decode()
    assert f"script-src 'sha256-{digest}'" in policy
    assert "unsafe-eval" not in policy
    assert "script-src 'unsafe-inline'" not in policy


WORDS = "</script><script>alert(1)</script> <!-- <b> & ' \" \u2028 @DATA@ @SCRIPT@ Küche"


def test_words_of_a_scene_cannot_leave_their_place():
    at = replace(view_plans.scene(), name=WORDS)
    plan = view_plans.plan(
        at, answer=WORDS, second=WORDS, findings=(replace(view_plans.mount_finding(), title=WORDS, detail=WORDS),)
    )
    written = page.compose(plan)
    reader = read(written)
    assert len(reader.scripts) == 3  # data, model, script: no more than the template has
    assert data_of(written)["scene"]["name"] == WORDS
    assert data_of(written)["plan"]["answer"] == WORDS
    assert reader.title == f"{WORDS}: duct plan (invented)"
    assert written.count("alert(1)") == written.count("\\u003cscript\\u003ealert(1)") + written.count(
        "&lt;script&gt;alert(1)"
    )


def test_words_about_the_data(text):
    data = data_of(text)
    assert data["schema"] == 1
    assert [j["n"] for j in data["tape"]["joists"]] == list(range(1, 10))
    assert data["tape"]["joists"][3] == {"n": 4, "a": 61.25, "b": 62.75, "label": "joist 4", "id": "joist-4"}
    assert data["tape"]["openings"] == [{"a": 112.0, "b": 140.0, "kind": "window", "label": "sink window"}]
    assert data["tape"]["things"] == [{"a": 0.0, "b": 21.0, "label": "wall cabinet"}]
    assert data["scene"]["hood"]["bottom"] == 66.0
    # lowest by the finding, highest by the shortest cover: ceiling 96 - cooktop 36 - body 11 - cover 16
    assert (data["band"]["lo"], data["band"]["hi"]) == (24.0, 33.0)
    assert (data["band"]["loWhy"], data["band"]["hiWhy"]) == ("Canopy above the cooktop", "shortest cover")


def test_every_node_of_the_model_is_described(text):
    import io

    import trimesh

    model = next(t for a, t in read(text).scripts if a.get("id") == "model")
    nodes = trimesh.load(io.BytesIO(base64.b64decode(model)), file_type="glb").graph.nodes_geometry
    assert set(nodes) == set(data_of(text)["pieces"])
    assert not any(name.startswith(("duct-", "cap-")) for name in nodes)  # the page draws the duct itself


def test_joists_along_the_wall_leave_no_marks_on_the_tape():
    from routeviz.model.scene import MemberKind, MemberLayout, RunDirection

    at = view_plans.scene()
    along = MemberLayout(MemberKind.SAWN, "2x8", 1.5, 7.25, 16.0, 14.0, RunDirection.ALONG)
    at = replace(at, ceiling=replace(at.ceiling, joists=along))
    tape = data_of(page.compose(view_plans.plan(at, (view_plans.out_the_back(at),))))["tape"]
    assert tape["joists"] == []
    assert tape["along"] == "joists"


def test_fixes_say_their_recheck_and_where_they_put_the_hood():
    shift = Fix(
        FixKind.SHIFT,
        "Shift 3 1/4 in left",
        (("hood.centre", "57 in"),),
        3.25,
        0.0,
        36.0,
        0.0,
        371.0,
        0,
        0,
        Verdict.WORKS,
        "Straight up.",
    )
    way = Fix(
        FixKind.WAY,
        "Let it end on the roof",
        (("cap.roof", "true"),),
        0.0,
        0.0,
        36.0,
        0.0,
        371.0,
        0,
        0,
        Verdict.WORKS,
        "Up.",
    )
    fixes = data_of(page.compose(view_plans.blocked(), fixes=(shift, way)))["fixes"]
    assert fixes[0]["x"] == pytest.approx(57.0)
    assert fixes[0]["recheck"] == shift.recheck
    assert fixes[1]["x"] is None


def test_no_route_and_no_map_still_make_a_page():
    data = data_of(page.compose(view_plans.blocked()))
    assert data["plan"]["options"] == []
    assert data["map"] is None
    assert data["plan"]["why"]["blockers"][0][:2] == ["joist-4", "joist 4"]


def test_the_bundle_is_fresh():
    last = (recipe.HERE / "bundle.js").read_text(encoding="utf-8").rstrip().rsplit("\n", 1)[-1]
    assert last == recipe.MARK + recipe.digest(), "run: python -m routeviz.views.web.build"


def test_the_template_has_each_mark_once():
    template = (recipe.HERE / "src" / "page.html").read_text(encoding="utf-8")
    marks = re.findall(r"@(\w+)@", template)
    assert sorted(marks) == sorted({"TITLE", "POLICY", "STYLE", "ANSWER", "DATA", "MODEL", "SCRIPT"})
    assert template.count("@") == 2 * len(marks)
