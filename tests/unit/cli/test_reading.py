# ruff: noqa: RUF001 - dashes and crosses stand here as people type them
import io
import json
import sys

import pytest

from bot import cli

SESSION = "AMRAP 12\n10 push-ups\n12 goblet squats @ 24/16 kg\n"


@pytest.fixture
def run(capsys):
    """Run a command: its exit code, and what it printed on standard output and error."""

    def run(*arguments):
        with pytest.raises(SystemExit) as ended:
            cli.main(arguments)
        return ended.value.code, *capsys.readouterr()

    return run


@pytest.fixture
def session(tmp_path):
    path = tmp_path / "session.txt"
    path.write_text(SESSION)
    return str(path)


def test_a_session_is_printed_as_one_document(run, session):
    code, out, err = run("read", "session", session, "--json")
    shown = json.loads(out)
    assert (code, err) == (0, "")
    assert shown.keys() == {"title", "date", "blocks", "corrected", "not_understood"}
    (block,) = shown["blocks"]
    assert (block["format"], block["minutes"], block["scheme"], block["cap_s"]) == ("amrap", 12, [], None)
    squats = block["lines"][1]
    assert (squats["movement"], squats["amount"], squats["loads_kg"]) == ("goblet squat", 12, [24, 16])
    assert (squats["unit"], squats["load_rule"], squats["per_side"]) == ("reps", None, False)


def test_a_load_rule_is_printed_with_its_one_field(run, tmp_path):
    path = tmp_path / "session.txt"
    path.write_text("AMRAP 12\n12 goblet squats @ 60%")
    shown = json.loads(run("read", "session", str(path), "--json")[1])
    assert shown["blocks"][0]["lines"][0]["load_rule"] == {"percent": 60}


def test_a_session_is_read_from_standard_input_and_printed_for_people(run, monkeypatch):
    monkeypatch.setattr(
        sys, "stdin", io.TextIOWrapper(io.BytesIO(b"AMRAP 12\n10 push-ups\n10 flying saucers"))
    )
    code, out, _ = run("read", "session", "-")
    assert code == 0
    assert out == (
        "Main\nAs many rounds as possible in 12 min\n10 push-ups\n"
        "line 3, column 4: not understood: flying saucers\n"
    )


@pytest.mark.parametrize(
    ("content", "place"), [(b"AMRAP 12\n\xff", "line 2: "), (b"", "line 1: "), (b"hello", "line 1: ")]
)
def test_a_file_without_a_session_is_named_by_its_place(run, tmp_path, content, place):
    path = tmp_path / "session.txt"
    path.write_bytes(content)
    code, out, err = run("read", "score", "7+12", "--for", str(path), "--json")
    assert (code, out) == (2, "")
    assert place in err.splitlines()[0]


def test_a_note_with_a_number_in_it_is_pointed_at(run, tmp_path):
    path = tmp_path / "session.txt"
    path.write_text("For time\n15 cal row - no rower: 200 m run\n12 burpees, no rush")
    code, out, _ = run("read", "session", str(path))
    kept = [line for line in out.splitlines() if line.startswith("kept as a note")]
    assert (code, kept) == (0, ["kept as a note, and not counted with: no rower: 200 m run"])


def test_a_missing_file_ends_with_2_and_its_name(run):
    assert run("read", "session", "nowhere.txt") == (2, "", "nowhere.txt: there is no such file.\n")


@pytest.mark.parametrize("text", ["7+12", "- 7+12", "– 7 rounds and 12", "-- 7+12"])
def test_a_score_may_begin_with_a_dash(run, session, text):
    code, out, err = run("read", "score", text, "--for", session, "--json")
    shown = json.loads(out)
    assert (code, err) == (0, "")
    assert (shown["rounds"], shown["reps"], shown["unit"], shown["sure"], shown["ask"]) == (
        7,
        12,
        "rounds",
        True,
        None,
    )


def test_a_score_below_zero_is_asked_about(run, session):
    shown = json.loads(run("read", "score", "-5", "--for", session, "--json")[1])
    assert shown["sure"] is False
    assert shown["ask"] == "A score can't be below zero. What was it?"


def test_a_block_counts_from_1_and_must_exist(run, session):
    assert run("read", "score", "7+12", "--for", session, "--block", "1")[0] == 0
    code, out, err = run("read", "score", "7+12", "--for", session, "--block", "2")
    assert (code, out) == (2, "")
    assert err.startswith("block 2: ")


def test_a_score_is_printed_for_people(run, session):
    assert run("read", "score", "7+12, wrist hurts", "--for", session)[1] == (
        "7 rounds + 12; pain: wrist hurts\n"
    )


def ranked(run, tmp_path, document):
    path = tmp_path / "scores.json"
    path.write_text(document if isinstance(document, str) else json.dumps(document))
    return run("rank", str(path), "--json")


def test_scores_of_a_file_are_ranked(run, tmp_path):
    scores = [
        {"name": "Ilse", "team": "red", "scaled": True, "rounds": 8, "reps": 0, "seconds": None},
        {"name": "Tomas", "team": "red", "scaled": False, "rounds": 7, "reps": 12},
        {"name": "Piet", "team": "blue", "scaled": False, "rounds": 7, "reps": 12},
    ]
    code, out, err = ranked(run, tmp_path, {"format": "amrap", "cap_s": None, "scores": scores})
    shown = json.loads(out)
    assert (code, err) == (0, "")
    assert [(row["rank"], row["name"], row["text"]) for row in shown["table"]] == [
        (1, "Tomas", "7 rounds + 12"),
        (1, "Piet", "7 rounds + 12"),
        (3, "Ilse", "8 rounds"),
    ]
    assert shown["teams"] == [
        {"rank": 1, "team": "red", "points": 4, "names": ["Tomas", "Ilse"]},
        {"rank": 2, "team": "blue", "points": 3, "names": ["Piet"]},
    ]


@pytest.mark.parametrize(
    ("document", "place"),
    [
        (
            {"format": "amrap", "scores": [{"name": "Ada", "rounds": 1}, {"name": "Bo", "rounds": -1}]},
            "score 2, rounds: ",
        ),
        ({"format": "amrap", "scores": [{"name": "Ada", "reps": 1}]}, "score 1 (Ada): "),
        ({"format": "amrap", "scores": [{"name": "Ada", "round": 1}]}, "score 1, round: "),
        ({"format": "amrap", "scores": [{"rounds": 1}]}, "score 1, name: "),
        ({"format": "juggling", "scores": []}, "format: "),
        ({"format": "for_time", "cap_s": -1, "scores": []}, "cap_s: "),
        ("{\n\n", "line 3: "),
        ("[1]", "line 1: "),
    ],
)
def test_a_wrong_entry_is_named(run, tmp_path, document, place):
    code, out, err = ranked(run, tmp_path, document)
    assert (code, out) == (2, "")
    assert place in err.splitlines()[0]


def test_a_message_is_printed_with_everything_it_holds(run, session):
    code, out, err = run(
        "read", "message", "7+5 and my left knee hurts", "--question", "score", "--for", session, "--json"
    )
    shown = json.loads(out)
    assert (code, err) == (0, "")
    assert [one["act"] for one in shown["acts"]] == ["scored", "hurt"]
    assert shown["acts"][0]["score"] == {"rounds": 7, "reps": 5}
    assert (shown["unread"], shown["ask"]) == ([], None)


def test_a_message_of_nothing_known_is_given_back(run):
    code, out, _ = run("read", "message", "- frobnicate", "--json")
    assert code == 0
    assert json.loads(out) == {"acts": [], "unread": ["frobnicate"], "ask": None}
