"""The live page's server: who may ask, what it answers, and what two pages agree on."""

from __future__ import annotations

import base64
import json
import re
import socket
import threading
import time
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from pathlib import Path

import httpx
import live_tools
import pytest
import trimesh
import uvicorn
import view_plans

from routeviz.views import page
from routeviz.views.app import Desk, application

SECRET = "a-word-nobody-guesses"


class Site(httpx.Client):
    """A client that knows the address, with the desk and the planning behind it."""

    desk: Desk
    planning: live_tools.PlansAtOnce
    host: str


@contextmanager
def served(folder: Path, ending: Callable[[], bool] = lambda: False) -> Iterator[Site]:
    """Serve a scene on this machine, as the command does."""
    desk, planning = live_tools.desk(folder), live_tools.PlansAtOnce()
    with socket.socket() as listening:
        listening.bind(("127.0.0.1", 0))
        host = f"127.0.0.1:{listening.getsockname()[1]}"
        app = application(desk, planning, secret=SECRET, hosts=frozenset({host}), ending=ending)
        server = uvicorn.Server(uvicorn.Config(app, log_level="critical", ws="none", timeout_graceful_shutdown=1))
        thread = threading.Thread(target=server.run, kwargs={"sockets": [listening]})
        thread.start()
        while not server.started:
            time.sleep(0.01)
        try:
            with Site(base_url=f"http://{host}/{SECRET}/", timeout=60, trust_env=False) as client:
                client.desk, client.planning, client.host = desk, planning, host
                yield client
        finally:
            server.should_exit = True
            thread.join(timeout=20)
    assert planning.closed


@pytest.fixture
def site(tmp_path: Path) -> Iterator[Site]:
    with served(tmp_path) as client:
        yield client


def post(site: Site, name: str, **body: object) -> httpx.Response:
    return site.post(name, json=body)


@pytest.mark.parametrize("path", ["/", "/news", f"/{SECRET[:-1]}x/", "/favicon.ico", f"/{SECRET}/news/../../etc", "//"])
def test_nothing_without_the_secret(site: Site, path: str) -> None:
    answer = site.get(f"http://{site.host}{path}")
    assert answer.status_code in ((204,) if path == "/favicon.ico" else (403, 404))
    assert "Juniper" not in answer.text


@pytest.mark.parametrize("host", ["127.0.0.1:9", "evil.example", "localhost", ""])
def test_nothing_under_another_name(site: Site, host: str) -> None:
    """A web site whose name was pointed at this machine sends its own name."""
    assert site.get("news", headers={"host": host}).status_code == 403


def test_nothing_for_another_pages_requests(site: Site) -> None:
    assert site.post("undo", json={}, headers={"origin": "http://evil.example"}).status_code == 403
    assert site.post("undo", json={}, headers={"origin": f"http://{site.host}"}).status_code == 200


def test_changing_needs_a_post_of_json(site: Site) -> None:
    assert site.get("change").status_code == 404
    assert (
        site.post(
            "change", content='{"changes": {"hood.mount": "28 in"}}', headers={"content-type": "text/plain"}
        ).status_code
        == 400
    )
    assert site.post("change", content="{", headers={"content-type": "application/json"}).status_code == 400
    assert site.post("change", content="x" * 1_000_001).status_code == 413
    assert site.desk.revision == 1


def test_the_page_may_talk_to_its_own_server_alone(site: Site) -> None:
    answer = site.get("")
    assert answer.status_code == 200
    policy = re.search(r'http-equiv="Content-Security-Policy" content="([^"]+)"', answer.text)[1]
    assert policy.startswith("default-src 'none'")
    assert policy.endswith("connect-src 'self'")
    assert answer.headers["cache-control"] == "no-store"
    data = json.loads(re.search(r'id="data">(.*?)</script>', answer.text, re.S)[1])
    assert data["live"]["number"] == 1
    assert "ceiling" in data["live"]["schema"]["properties"]
    assert SECRET not in answer.text


def test_the_offline_page_may_still_ask_nothing() -> None:
    text = page.compose(view_plans.plan())
    assert "connect-src" not in text
    assert '"live"' not in re.search(r'id="data">(.*?)</script>', text, re.S)[1]


def test_a_change_is_planned_and_told_to_who_waits(site: Site) -> None:
    before = site.get("news", params={"have": 1}).json()
    assert "plan" not in before
    said = post(site, "change", changes={"ceiling.joists.first": "15 1/4 in"})
    assert said.status_code == 200
    assert said.json()["state"]["unsaved"]
    assert [n for n, _ in site.planning.asked] == [1, 2]
    assert site.planning.asked[-1][1].ceiling.joists.first_in == 15.25
    news = site.get("news", params={"have": 1, "after": before["news"], "wait": 20}).json()
    assert news["news"] > before["news"]
    assert news["plan"]["data"]["live"]["number"] == 2
    assert news["plan"]["base"] == 1
    assert news["plan"]["model"] == "", "the same plan again: no piece looks different"
    assert news["state"]["raw"]["ceiling"]["joists"]["first"] == "15 1/4 in"
    assert news["state"]["assumed"]["duct.clearance"] == ["1/4 in", "common practice"]


def test_who_missed_a_step_gets_the_whole_model(site: Site) -> None:
    for first in ("15 in", "13 in"):
        post(site, "change", changes={"ceiling.joists.first": first})
    news = site.get("news", params={"have": 1}).json()
    assert (news["number"], news["plan"]["base"], news["plan"]["model"]) == (3, 2, None)
    model = site.get("model")
    assert model.headers["x-plan"] == "3"
    whole = trimesh.load(trimesh.util.wrap_as_stream(model.content), file_type="glb")
    assert set(whole.graph.nodes_geometry) == set(news["plan"]["data"]["pieces"])


def test_a_page_that_shows_nothing_gets_every_piece(tmp_path: Path) -> None:
    with served(tmp_path) as site:
        news = site.get("news").json()
    assert news["plan"]["base"] == 0
    found = trimesh.load(trimesh.util.wrap_as_stream(base64.b64decode(news["plan"]["model"])), file_type="glb")
    assert set(found.graph.nodes_geometry) == set(news["plan"]["data"]["pieces"])


def test_every_mistake_is_answered_by_its_field(site: Site) -> None:
    said = post(site, "change", changes={"ceiling.joists.first": "x", "kitchen.width": "3 in"})
    assert said.status_code == 200, "a refusal is an answer"
    mistakes = {m["field"]: m for m in said.json()["mistakes"]}
    assert set(mistakes) == {"ceiling.joists.first", "kitchen.width"}
    assert mistakes["kitchen.width"]["problem"] == "must be at least 24 in"
    assert len(site.planning.asked) == 1, "nothing new was planned"


def test_a_list_of_changes_is_taken_as_far_as_it_stands(site: Site) -> None:
    said = post(site, "change", changes=[{"kitchen.width": "3 in"}, {"hood.mount": "28 in"}]).json()
    assert said["held"] == [0]
    assert [m["field"] for m in said["mistakes"]] == ["kitchen.width"]
    assert said["state"]["raw"]["hood"]["mount"] == "28 in"
    assert len(site.planning.asked) == 2
    said = post(site, "change", changes=[{"kitchen.width": "3 in"}]).json()
    assert (said["held"], said["state"]["revision"]) == ([0], 2)
    assert len(site.planning.asked) == 2, "nothing new was planned"
    assert post(site, "change", changes=[1]).status_code == 400


def test_two_pages_see_the_same(site: Site) -> None:
    post(site, "change", changes={"hood.mount": "28 in"})
    one, two = (site.get("news", params={"have": have}).json()["state"] for have in (1, 2))
    assert one == two
    post(site, "undo")
    assert site.get("news").json()["state"]["raw"]["hood"]["mount"] == "30 in"
    assert site.get("news").json()["state"]["redo"]


def test_save_load_and_keep(site: Site) -> None:
    post(site, "change", changes={"hood.mount": "28 in"})
    live_tools.write(site.desk.path, live_tools.JUNIPER.replace('width = "12 ft"', 'width = "13 ft"', 1))
    refused = post(site, "save")
    assert (refused.json()["saved"], refused.json()["state"]["disk"]) == (False, "changed")
    assert post(site, "load").json()["state"]["raw"]["kitchen"]["width"] == "13 ft"
    post(site, "undo")
    assert post(site, "save").json()["saved"]
    assert site.desk.path.read_text(encoding="utf-8") == site.desk.text
    assert "28 in" in site.desk.text


def test_a_waiting_page_hears_of_a_changed_file(site: Site) -> None:
    news = site.get("news", params={"have": 1}).json()["news"]
    site.desk.path.unlink()
    found = site.get("news", params={"have": 1, "after": news, "wait": 20}).json()
    assert found["state"]["disk"] == "gone"


def test_waiting_ends_without_news(site: Site) -> None:
    news = site.get("news", params={"have": 1}).json()["news"]
    assert site.get("news", params={"have": 1, "after": news, "wait": 1}).json()["news"] == news


@pytest.mark.parametrize("query", ["after=x", "have=-1", "wait=1e9x", "after=99999999999999999999", "wait=½"])
def test_odd_questions_get_plain_answers(site: Site, query: str) -> None:
    assert site.get(f"news?{query}").status_code == 200


def test_joists_are_told_before_they_are_taken(site: Site) -> None:
    said = post(site, "preview", marks="13 1/4, 29, 45 1/8").json()
    assert [round(j[1], 3) for j in said["joists"][:3]] == [13.25, 29, 45.125]
    assert site.desk.text == live_tools.JUNIPER
    wrong = post(site, "preview", marks="13 1/4, about 29")
    assert "not a length" in wrong.json()["trouble"]
    assert post(site, "preview", marks=5).status_code == 400


def test_a_row_is_added_by_its_list(site: Site) -> None:
    row = {
        "name": "pipe-1",
        "kind": "pipe",
        "left": "40 in",
        "bottom": "80 in",
        "width": "2 in",
        "depth": "2 in",
        "height": "10 in",
    }
    assert "mistakes" not in post(site, "add", place="obstacles", row=row).json()
    assert [o.id for o in site.desk.scene.obstacles] == ["pipe-1"]
    assert post(site, "add", place="hood", row=row).json()["mistakes"]
    assert post(site, "add", place="nowhere", row=row).json()["mistakes"]
    assert post(site, "add", place=1, row=row).status_code == 400


def test_stopping_is_passed_on(site: Site) -> None:
    assert post(site, "stop").status_code == 200
    assert site.planning.stopped == 1


def test_pages_are_told_when_the_program_ends(tmp_path: Path) -> None:
    over: list[int] = []
    with served(tmp_path, ending=lambda: bool(over)) as site:
        assert "state" in site.get("news").json()
        over.append(1)
        assert site.get("news", params={"after": 999, "wait": 20}).json() == {"ending": True}


def test_without_a_first_plan_the_browser_is_told_what_to_do(site: Site) -> None:
    shown = site.planning.shown
    with shown.seen:
        shown.plan, shown.change, shown.trouble = None, None, "The grid would be too large: <9 GB>."
    found = site.get("")
    assert found.status_code == 503
    assert found.headers["content-type"].startswith("text/html")
    assert "The grid would be too large: &lt;9 GB&gt;." in found.text
    assert f"mend {site.desk.path.name} and start it again" in found.text
    assert "refresh" not in found.text, "what failed would fail again"
