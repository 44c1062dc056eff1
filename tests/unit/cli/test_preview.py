import json
from pathlib import Path

import pytest

from bot.cli import main

ROOT = Path(__file__).parents[3]
SESSION = "AMRAP 12\n10 push-ups\n12 goblet squats @ 24/16 kg\n200 m run\n"
ROSTER = """
[[athlete]]
name = "Bo"
sex = "male"
body_mass_kg = 80
equipment = [{ implement = "kettlebell", loads_kg = [24] }]
tests = [{ movement = "push-ups", reps = 30 }, { movement = "goblet squat", load_kg = 24, reps = 25 }]

[[athlete]]
name = "Ilse"
sex = "female"
body_mass_kg = 62.5
units = "lb"
equipment = [{ implement = "chair" }, { implement = "dumbbell", loads_kg = [12] }]
limits = ["no-running"]
space = { running = false }
tests = [{ movement = "push-up", reps = 7 }, { movement = "goblet squat", load_kg = 12, reps = 20 }]

[[athlete]]
name = "Ute"
screening = "stop"
"""


@pytest.fixture
def preview(tmp_path, capsys):
    def run(*options, session=SESSION, roster=ROSTER):
        (tmp_path / "session.txt").write_text(session, encoding="utf-8")
        (tmp_path / "roster.toml").write_text(roster, encoding="utf-8")
        arguments = ["preview", str(tmp_path / "session.txt"), "--roster", str(tmp_path / "roster.toml")]
        with pytest.raises(SystemExit) as left:
            main([*arguments, *options])
        out, err = capsys.readouterr()
        return left.value.code or 0, out, err

    return run


def test_json_tells_every_version_and_the_group(preview):
    code, out, _ = preview("--json")
    told = json.loads(out)
    bo, ilse, ute = told["versions"]
    assert code == 0
    assert (bo["athlete"], bo["as_written"]) == ("Bo", True)
    push_ups = ilse["blocks"][0]["lines"][0]
    assert (push_ups["movement"], push_ups["variant"], push_ups["implement"]) == (
        "push-up",
        "knees",
        None,
    )
    assert (push_ups["amount"], push_ups["unit"], push_ups["change"]) == (10, "reps", "variant")
    assert 0 < push_ups["set_cost"] < 1
    assert "number stays the same" in push_ups["reason"]
    expected = ilse["blocks"][0]["forecast"]
    assert expected["unit"] == "rounds"
    assert expected["low"] <= expected["expected"] <= expected["high"]
    assert ilse["blocks"][0]["pacing"][0].startswith("About ")
    assert (ute["blocks"], ute["as_written"]) == ([], False)
    assert [line["as_written"] for line in told["group"]["lines"]] == [1, 1, 1]
    assert told["session"]["blocks"][0]["format"] == "amrap"


def test_people_read_plain_words_with_loads_as_they_are_marked(preview):
    code, out, _ = preview()
    assert code == 0
    assert "Bo: as written" in out
    assert "12 goblet squats (12 kg dumbbell). You don't have 16 kg for this" in out
    assert "Ute: No session until you've been cleared" in out


HEAVIER = """[[athlete]]
name = "Bo"
experience = "trained"
equipment = [{ implement = "kettlebell", loads_kg = [28] }]
tests = [{ movement = "goblet squat", load_kg = 32, reps = 20 }]
"""


def test_a_version_of_somebody_unknown_is_said_to_be_a_guess(preview):
    _, out, _ = preview(roster="[[athlete]]\nname = 'A'\n" + ROSTER)
    assert out.count("everything here is a guess") == 1


def test_what_is_no_lighter_counts_as_written_and_is_not_said_to_be_so(preview):
    _, out, _ = preview(session="AMRAP 10\n10 goblet squats @ 26 kg", roster=HEAVIER)
    assert "\nBo: counts as written\n" in out


def test_the_group_comes_first_and_few_are_named(preview):
    _, out, _ = preview()
    assert out.splitlines()[1] == "  10 push-ups: 1 as written, an easier or harder way for Ilse"


def test_the_readme_shows_what_the_command_prints(preview):
    examples = ROOT / "tests" / "examples"
    session, roster = (examples / name for name in ("session.txt", "roster.toml"))
    _, out, _ = preview(session=session.read_text("utf-8"), roster=roster.read_text("utf-8"))
    assert f"```\n{out.strip()}\n```" in (ROOT / "README.md").read_text("utf-8")


@pytest.mark.parametrize(
    ("line", "problem"),
    [
        ("body_mass = 62", "athlete 1 (Ilse): body_mass: "),
        ("tests = [{ movement = 'moonwalk', reps = 3 }]", "athlete 1 (Ilse): unknown movement moonwalk"),
        ("limits = ['gravity']", "athlete 1 (Ilse): unknown limit gravity"),
        ("equipment = [{ implement = 'anvil' }]", "athlete 1 (Ilse): unknown implement anvil"),
        (
            "equipment = [{ implement = 'dumbbell', from_kg = 20, to_kg = 5 }]",
            "athlete 1 (Ilse): equipment.1: ",
        ),
        ("pair = 3", "athlete 1 (Ilse): pair: "),
        ("skills = ['moonwalk']", "athlete 1 (Ilse): unknown movement moonwalk"),
        ("experience = 'expert'", "athlete 1 (Ilse): experience: "),
        ("pregnancy = { week = 60 }", "athlete 1 (Ilse): pregnancy.week: "),
        ("place = { garden = true }", "athlete 1 (Ilse): place.garden: "),
    ],
)
def test_a_wrong_roster_names_the_athlete(preview, line, problem):
    code, out, err = preview("--json", roster=f"[[athlete]]\nname = 'Ilse'\n{line}\n")
    assert (code, out) == (2, "")
    assert f"roster.toml, {problem}" in err.splitlines()[0]


def test_text_that_is_not_understood_names_its_lines_and_the_rest_lands_all_the_same(preview):
    code, out, err = preview(session="AMRAP 12\n10 push-ups\n12 flibbertigibbets\n7 grumbles\n")
    assert code == 2
    assert "session.txt, line 3: not understood: flibbertigibbets" in err
    assert "session.txt, line 4: " in err
    assert "this is in nobody's version" in err
    assert out.startswith("The group\n  10 push-ups: ")
    assert "flibbertigibbets" not in out


def test_a_name_mistyped_for_why_is_guessed(preview):
    code, _, err = preview("--why", "Ilze")
    assert (code, err.strip()) == (2, "--why: nobody called Ilze in the roster, did you mean Ilse?")


def test_why_a_line_is_so_is_told_in_words(preview):
    code, out, _ = preview("--why", "ilse")
    assert code == 0
    assert "10 push-ups\n  taken: push-ups from the knees, " in out
    assert "one step easier or harder on the ladder of the same movement\n" in out
    assert "\n  next best: " in out
    assert "_" not in out


def test_a_limit_is_named_once_for_each_athlete(preview):
    _, out, _ = preview(session="AMRAP 12\n200 m run\n10 burpees\n20 squat jumps\n")
    _, ilse = out.split("\nIlse\n")
    assert ilse.count("As you said: no running") == 1
    assert ilse.count("For the same reason") >= 1


CIRCUMSTANCES = """
[[athlete]]
name = "Ilse"
experience = "some"
skills = ["handstand hold", "double-under"]
pregnancy = { week = 24, cleared = true }
place = { run_m = 0, floor_m = 4, stairs = true, wall = true, table = true, doorway = true, bar_in_door = false }

[[athlete]]
name = "Ute"
weeks_off = 5
after_birth = { weeks = 20, cleared = true }

[[athlete]]
name = "Bo"
limits = ["seated"]
seated = { trunk = true, floor = false }
"""


def test_the_weeks_of_a_pregnancy_a_seat_and_the_place_are_heeded(preview):
    code, out, err = preview("--json", session="AMRAP 12\n10 burpees\n200 m run", roster=CIRCUMSTANCES)
    assert code == 0, err
    ilse, ute, bo = json.loads(out)["versions"]
    burpees, run = ilse["blocks"][0]["lines"]
    assert burpees["variant"] in {"hands-on-table", "hands-on-chair", "hands-on-wall"}
    assert run["movement"] != "run"
    assert all(line["movement"] != "rest" for line in ute["blocks"][0]["lines"])
    assert {line["movement"] for line in bo["blocks"][0]["lines"]} <= {
        "punches",
        "seated march",
        "wheelchair push",
    }


def test_earlier_scores_move_what_is_expected(preview):
    session = "AMRAP 12\n10 push-ups\n20 air squats\n"
    before = """[[athlete]]
name = "Ilse"
experience = "some"
tests = [{ movement = "push-up", reps = 18 }, { movement = "air squat", reps = 45 }]
"""
    score = "{ value = 11.5, unit = 'rounds', rounds = 11, reps = 15, sure = true }"
    rows = (
        ", ".join(
            f"{{ date = 2026-03-{day:02}, session = 'AMRAP 12\\n10 push-ups\\n20 air squats', score = {score} }}"
            for day in (2, 4, 6)
        )
        .replace("'AMRAP", '"AMRAP')
        .replace("squats'", 'squats"')
    )
    usual, learned = (
        json.loads(preview("--json", session=session, roster=roster)[1])["versions"][0]["blocks"][0][
            "forecast"
        ]
        for roster in (before, f"{before}scores = [{rows}]\n")
    )
    assert usual["expected"] < learned["expected"] < 11.6
    assert learned["high"] / learned["low"] < usual["high"] / usual["low"]


def test_an_earlier_session_that_is_not_understood_is_named(preview):
    row = "{ date = 2026-03-02, session = 'hello', score = { rounds = 3 } }"
    code, _, err = preview("--json", roster=f"[[athlete]]\nname = 'Ilse'\nscores = [{row}]\n")
    assert code == 2
    assert "athlete 1 (Ilse): scores: the session of 2026-03-02" in err
