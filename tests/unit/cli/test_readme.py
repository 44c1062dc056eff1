"""What the README says of boards, and docs/running.md of commands, settings and files, is so."""

import re
from pathlib import Path

import pytest

from bot import cli
from bot.commands.listed import COMMANDS
from bot.commands.roster import _Athlete
from bot.settings import Settings
from core.desk.sessions.preview import read_text
from core.sessions.values import Format

ROOT = Path(__file__).parents[3]
README = (ROOT / "README.md").read_text("utf-8")
RUNNING = (ROOT / "docs" / "running.md").read_text("utf-8")
# What a line of the table needs around it to be a session, by what it begins with; `{}` for each piece.
BOARDS = {
    **dict.fromkeys(("AMRAP", "4 rounds", "Every 3", "In teams", "Superset"), "{}\n10 burpees"),
    **dict.fromkeys(("21-15-9", "8 rounds", "Tabata", "Circuit"), "{}\nburpees"),
    **dict.fromkeys(("12 goblet", "8 single", "10 push"), "AMRAP 9\n{}"),
    "EMOM": "{}\n{}\n{}",
    "Warm-up": "{}\n10 squats\n{}\n20 s plank\n{}\n5 x 5 deadlifts\n{}\nAMRAP 9\n10 burpees\n{}\n10 squats",
    "3 x 10": "{1}\n{0}",
    "Buy-in": "For time\n{}\n3 rounds\n10 burpees\n{}",
}
# For rehearsals and measurements.
NOT_FOR_OPERATORS = {"clock_url", "pace"}


def rows(heading):
    """The first cells of the table under a header row."""
    table = (README + RUNNING).split(f"{heading} |\n| --- | --- |\n")[1].split("\n\n")[0]
    return [row.split(" | ")[0].removeprefix("| ") for row in table.splitlines()]


def block(language, word):
    return next(text for text in re.findall(rf"```{language}\n(.*?)```", RUNNING, re.DOTALL) if word in text)


@pytest.fixture
def run(capsys, tmp_path, monkeypatch):
    monkeypatch.chdir(tmp_path)

    def run(*arguments, **files):
        for name, text in files.items():
            (tmp_path / name.replace("_", ".")).write_text(text)
        with pytest.raises(SystemExit) as ended:
            cli.main(arguments)
        assert ended.value.code == 0, capsys.readouterr().err
        return capsys.readouterr().out

    return run


def test_every_command_is_listed_and_no_other():
    named = {name for cell in rows("what it does") for name in re.findall(r"`bellwether (\w+)", cell)}
    assert named == set(COMMANDS)


def test_every_setting_is_listed_and_no_other():
    wanted = {f"BELLWETHER_{name.upper()}" for name in Settings.model_fields if name not in NOT_FOR_OPERATORS}
    assert {cell.strip("`") for cell in rows("| setting | meaning")} == wanted


def test_every_key_of_a_roster_is_listed_and_no_other():
    named = {name for cell in rows("what it tells") for name in re.findall(r"`(\w+)`", cell)}
    assert named == set(_Athlete.model_fields)


def test_every_format_of_a_score_is_named():
    line = next(line for line in RUNNING.splitlines() if line.startswith("`format` is one of"))
    assert set(re.findall(r"`(\w+)`", line.split(". ")[0])) - {"format"} == set(Format)


def test_which_commands_print_json(run):
    [told] = re.findall(r"All but (.*) take `--json`", RUNNING)
    without = set(re.findall(r"`(\w+)`", told))
    for name in COMMANDS:
        if name != "read":
            assert ("--json" in run(name, "--help")) == (name not in without), name


def test_the_example_files_are_read(run):
    out = run(
        "preview",
        "s.txt",
        "--roster",
        "r.toml",
        s_txt="AMRAP 5\n5 push-ups\n",
        r_toml=block("toml", "[[athlete]]"),
    )
    assert "Ilse" in out
    assert "  1. Bo  7 rounds + 12" in run("rank", "f.json", f_json=block("json", '"format"'))
    dates = ("--from", "2026-03-03", "--to", "2026-03-10")
    out = run("classes", "c.toml", *dates, c_toml=block("toml", "[[class]]"))
    assert out.count("Live class") == 1, "the second date is skipped"
    assert "Cal is reminded" in out


@pytest.mark.parametrize("path", ["README.md", "docs/running.md"])
def test_what_they_show_and_point_to_is_there(path):
    for name, heading in re.findall(
        r"\]\((?!https?:)([^)#]+)(?:#([^)]+))?\)", (ROOT / path).read_text("utf-8")
    ):
        found = (ROOT / path).parent / name
        assert found.is_file(), name
        if heading:
            headings = re.findall(r"^#+ (.*)$", found.read_text("utf-8"), re.MULTILINE)
            assert heading in {re.sub(r"[^\w -]", "", one.lower()).replace(" ", "-") for one in headings}


@pytest.mark.parametrize("cell", rows("| you write | it reads"))
def test_every_line_of_a_board_that_the_readme_shows_is_read(cell):
    pieces = re.findall(r"`([^`]+)`", cell)
    board = next((board for begins, board in BOARDS.items() if pieces[0].startswith(begins)), "{}")
    read = read_text(board.format(*pieces))
    assert read.session is not None
    assert read.unread == ()
