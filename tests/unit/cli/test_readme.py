"""What the README says of commands, settings and files is so."""

import re
from pathlib import Path

import pytest

from bot import cli
from bot.commands.listed import COMMANDS
from bot.commands.roster import _Athlete
from bot.settings import Settings
from core.sessions.values import Format

ROOT = Path(__file__).parents[3]
README = (ROOT / "README.md").read_text("utf-8")
# For rehearsals and measurements, or not built yet.
NOT_FOR_OPERATORS = {"clock_url", "pace", "webhook_url", "webhook_secret"}


def rows(heading):
    """The first cells of the table under a header row."""
    table = README.split(f"{heading} |\n| --- | --- |\n")[1].split("\n\n")[0]
    return [row.split(" | ")[0].removeprefix("| ") for row in table.splitlines()]


def block(language, word):
    return next(text for text in re.findall(rf"```{language}\n(.*?)```", README, re.DOTALL) if word in text)


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
    line = next(line for line in README.splitlines() if line.startswith("`format` is one of"))
    assert set(re.findall(r"`(\w+)`", line.split(". ")[0])) - {"format"} == set(Format)


def test_which_commands_print_json(run):
    [told] = re.findall(r"All but (.*) take `--json`", README)
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


def test_what_the_readme_shows_is_there():
    for name in re.findall(r"\]\((?!https?:)([^)#]+)\)", README):
        assert (ROOT / name).is_file(), name
