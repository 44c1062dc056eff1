import json

import pytest

from bot import cli
from core.movements.catalogue import catalogue


@pytest.fixture
def run(capsys):
    """Run a command: its exit code, and what it printed on standard output and error."""

    def run(*arguments):
        with pytest.raises(SystemExit) as ended:
            cli.main(arguments)
        return ended.value.code, *capsys.readouterr()

    return run


def test_one_movement_is_shown_with_its_facts_and_their_sources(run):
    code, out, err = run("movements", "push-up", "--json")
    shown = json.loads(out)
    assert (code, err) == (0, "")
    assert (shown["id"], shown["pattern"], shown["unit"]) == ("push-up", "horizontal-push", "reps")
    assert shown["body_share"]["value"] == 0.64
    assert "Ebben" in shown["body_share"]["source"]
    assert shown["seconds"]["source"]
    assert "wrist-bent" in shown["demands"]
    assert set(shown["cues"]) == {"start", "counts", "cues", "fault"}
    assert shown["cautions"]
    assert "push-up/hands-on-chair" in shown["easier"]
    chair = next(one for one in shown["variants"] if one["id"] == "hands-on-chair")
    assert chair["implements"] == ["chair"]
    assert "Use a firm chair without wheels and push it against the wall." in chair["cautions"]


def test_the_whole_catalogue_is_one_document(run):
    shown = json.loads(run("movements", "--json")[1])
    assert [one["id"] for one in shown["movements"]] == [one.id for one in catalogue().movements]


def test_a_variant_is_shown_by_its_own_name(run):
    shown = json.loads(run("movements", "Knee Push Ups", "--json")[1])
    assert (shown["id"], shown["variant"], shown["body_share"]["value"]) == ("push-up", "knees", 0.49)


def test_the_id_of_a_line_is_understood_too(run):
    assert json.loads(run("movements", "bird dog/hold", "--json")[1])["unit"] == "s"


def test_people_read_a_card(run):
    code, out, _ = run("movements", "goblet squats")
    assert code == 0
    assert "Start: Hold the weight close to your chest" in out
    assert "Usual fault:" in out
    assert "Take care:" in out


def test_people_read_a_list_by_patterns(run):
    out = run("movements")[1]
    ways = len(catalogue().movement("push-up").variants)
    assert f"Horizontal push\n  push-up ({ways} ways)" in out


@pytest.mark.parametrize(("typed", "meant"), [("pushpu", "push-up"), ("goblin squat", "goblet squat")])
@pytest.mark.parametrize("as_json", [[], ["--json"]])
def test_an_unknown_name_is_told_with_what_may_be_meant(run, typed, meant, as_json):
    code, out, err = run("movements", typed, *as_json)
    assert (code, out) == (2, "")
    assert typed in err
    assert meant in err


def test_a_name_like_nothing_is_told_without_a_guess(run):
    code, _, err = run("movements", "zzzz")
    assert code == 2
    assert err == "zzzz: no movement is called so; `bellwether movements` lists them.\n"


def test_limits_are_one_document(run):
    shown = json.loads(run("limits", "--json")[1])
    wrist = next(one for one in shown["limits"] if one["id"] == "wrist")
    assert wrist["rules_out"] == ["wrist-bent"]
    assert wrist["caution"]


def test_people_read_what_each_limit_does(run):
    out = run("limits")[1]
    assert "no-jumping: leaves out jumping; keeps light impact" in out
    assert "asthma: a caution" in out
    assert "fever: no session: rest;" in out
