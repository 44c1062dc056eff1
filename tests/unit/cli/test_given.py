"""What is wrong with a file is told in our own words, with the nearest that may have been meant."""

import re
import subprocess
import sys

import pytest

from bot import cli
from bot.commands.listed import COMMANDS

LOADED = """
import sys
from bot import cli
cli.assembled("")
print(*[one for one in sys.modules if one.startswith(("core.", "pydantic", "bot.commands."))])
"""
SESSION = "AMRAP 12\n10 push-ups\n"


@pytest.fixture
def run(capsys, tmp_path, monkeypatch):
    monkeypatch.chdir(tmp_path)

    def run(*arguments, **files):
        for name, text in files.items():
            (tmp_path / name.replace("_", ".")).write_text(text)
        with pytest.raises(SystemExit) as ended:
            cli.main(arguments)
        return ended.value.code, *capsys.readouterr()

    return run


def preview(run, roster, session=SESSION):
    return run("preview", "s.txt", "--roster", "r.toml", s_txt=session, r_toml=roster)


@pytest.mark.parametrize(
    ("line", "told"),
    [
        ("bodymass = 62", "bodymass: unknown key, did you mean body_mass_kg?"),
        (
            "equipment = [{ implement = 'kettelbell' }]",
            "unknown implement kettelbell, did you mean kettlebell?",
        ),
        ("equipment = [{ implment = 'band' }]", "equipment.1.implment: unknown key, did you mean implement?"),
        ("limits = ['kneee']", "unknown limit kneee, did you mean knee?"),
        ("skills = ['pusch-up']", "unknown movement pusch-up, did you mean "),
        ("body_mass_kg = 7", "body_mass_kg: should be at least 20, not 7"),
        ("body_mass_kg = 'heavy'", "body_mass_kg: should be a number, not heavy"),
        ("birth_year = 1990.5", "birth_year: should be a whole number, not 1990.5"),
        ("sex = 'f'", "sex: should be 'female' or 'male', not f"),
        ("today = { sick = 'very' }", "today.sick: should be true or false, not very"),
        ("limits = 'knee'", "limits: should be a list in [ ], not knee"),
        ("place = 3", "place: should be a table in { }, not 3"),
        ("pregnancy = { week = 60 }", "pregnancy.week: should be at most 42, not 60"),
        ("today = { sore = ['banana'] }", "today.sore: unknown part banana (there are legs, "),
        ("birth_year = '1990'", "birth_year: should be a number without quotes, not '1990'"),
        (
            "equipment = [{ implement = 'kb', loads_kg = [8, '10'] }]",
            "equipment.1.loads_kg.2: should be a number without quotes, not '10'",
        ),
    ],
)
def test_a_key_or_value_that_is_wrong(run, line, told):
    code, out, err = preview(run, f"[[athlete]]\nname = 'Ilse'\n{line}\n")
    assert (code, out) == (2, "")
    assert err.startswith(f"r.toml, athlete 1 (Ilse): {told}"), err
    assert len(err.splitlines()) == 1


def test_all_that_is_wrong_in_both_files_is_named_at_once(run):
    roster = (
        "[[athlete]]\nname = 'Bo'\nbodymass = 80\n"
        "equipment = [{ implement = 'kettelbell' }, { implement = 'dumbel' }]\n"
        "[[athlete]]\nname = 'Ilse'\n"
        "[[athlete]]\nname = 'Tam'\nlimits = ['kneee']\n"
    )
    code, out, err = preview(run, roster, "AMRAP 12\n10 push-ups\n5 flibbers\n3 zoggles\n")
    assert (code, out) == (2, "")
    assert [line.partition(", did")[0] for line in err.splitlines()] == [
        "s.txt, line 3: not understood: flibbers",
        "s.txt, line 4: not understood: zoggles",
        "r.toml, athlete 1 (Bo): bodymass: unknown key",
        "r.toml, athlete 1 (Bo): unknown implement kettelbell",
        "r.toml, athlete 1 (Bo): unknown implement dumbel",
        "r.toml, athlete 3 (Tam): unknown limit kneee",
    ]


def test_every_class_and_every_score_that_is_wrong_is_named(run):
    dates = ("--from", "2026-03-02", "--to", "2026-03-08")
    rows = "[[class]]\ntitle = 'A'\nstart = 3\n[[athlete]]\nname = 'Cal'\nzone = 5\n"
    _, _, err = run("classes", "c.toml", *dates, c_toml=rows)
    assert {line.split(":")[0] for line in err.splitlines()} == {
        "c.toml, class 1 (A)",
        "c.toml, athlete 1 (Cal)",
    }
    scores = '{"format": "amrap", "scores": [{"name": "Bo", "repz": 3}, {"name": "Ilse", "rounds": "x"}]}'
    _, _, err = run("rank", "f.json", f_json=scores)
    assert [line.split(":")[0] for line in err.splitlines()] == [
        "f.json, score 1, repz",
        "f.json, score 2, rounds",
    ]


def test_what_is_wrong_within_one_key_is_named_at_once_too(run):
    things = (
        "[{ implment = 'band' }, { implement = 'anvil' }, { implement = 'dumbbell', each = 0 },"
        " { implement = 'dumbbell', loads_kg = ['8'] }]"
    )
    _, _, err = preview(run, f"[[athlete]]\nname = 'Bo'\nequipment = {things}\n")
    assert {line.removeprefix("r.toml, athlete 1 (Bo): ") for line in err.splitlines()} == {
        "equipment.1.implment: unknown key, did you mean implement?",
        "equipment.3.each: should be at least 1, not 0",
        "equipment.4.loads_kg.1: should be a number without quotes, not '8'",
        "unknown implement anvil (`bellwether implements` lists them)",
    }


def test_two_of_one_name_are_told_apart_first(run):
    _, _, err = preview(run, "[[athlete]]\nname = 'Bo'\n[[athlete]]\nname = 'bo'\n")
    assert err.startswith("r.toml, athlete 2 (bo): athlete 1 has this name too")


@pytest.mark.parametrize("words", ["preview b.txt --roster none.toml", "read session b.txt", "rank b.txt"])
def test_a_file_that_is_no_text_is_named(run, tmp_path, words):
    (tmp_path / "b.txt").write_bytes(b"AMRAP 5\n\xff\xfe")
    assert run(*words.split())[2].startswith("b.txt, line 2: this is not UTF-8 text.\n")


def test_a_thing_is_found_by_its_other_names(run):
    assert run("implements", "kb")[1] == run("implements", "kettlebell")[1] != ""


@pytest.mark.parametrize(
    "arguments", [("read", "session", "s.txt"), ("preview", "s.txt", "--roster", "r.toml")]
)
def test_an_empty_file_is_said_to_be_empty(run, arguments):
    code, out, err = run(*arguments, s_txt=" \n", r_toml="[[athlete]]\nname = 'Ilse'\n")
    assert code == 2
    assert (out or err).strip() in {"There is nothing in it to read.", "s.txt: no session in it"}


@pytest.mark.parametrize(
    "words",
    [
        "preview none.txt --roster none.toml",
        "rank none.json",
        "read session none.txt",
        "classes none.toml --from 2026-03-02 --to 2026-03-08",
    ],
)
def test_a_file_that_is_not_there(run, words):
    code, out, err = run(*words.split())
    assert (code, out) == (2, "")
    assert err.endswith(": there is no such file.\n")


def test_a_folder_in_place_of_a_file(run):
    assert run("rank", ".") == (2, "", ".: this is a folder, not a file.\n")


def test_a_table_that_is_no_toml_names_its_line(run):
    code, _, err = preview(run, "[[athlete]]\nname Ilse\n")
    assert code == 2
    assert err.startswith("r.toml, line 2, column 6: this is not TOML: Expected '=' after a key")


def test_a_table_of_another_name(run):
    code, _, err = preview(run, "[[athlet]]\nname = 'Ilse'\n")
    assert (code, err) == (2, "r.toml: unknown key athlet, did you mean athlete?; there may be athlete\n")


def test_a_key_of_a_score_that_nobody_knows(run):
    code, _, err = run("rank", "f.json", f_json='{"format": "amrap", "scores": [{"name": "Bo", "repz": 3}]}')
    assert (code, err) == (2, "f.json, score 1, repz: unknown key, did you mean reps?\n")


def test_a_file_that_is_no_json(run):
    code, _, err = run("rank", "f.json", f_json='{\n"format": }')
    assert code == 2
    assert err.startswith("f.json, line 2: this is not JSON: ")


@pytest.mark.parametrize("arguments", [("read", "session", "s.txt"), ("read", "message", "xqzw vrtl")])
def test_where_nothing_was_understood_it_ends_with_2_and_says_so(run, arguments):
    code, out, _ = run(*arguments, s_txt="lorem ipsum dolor\n")
    assert code == 2
    assert "not understood" in out


def test_a_command_of_nearly_that_name(run):
    code, _, err = run("prevew")
    assert (code, err) == (
        2,
        "prevew: there is no such command. Did you mean preview? `bellwether --help` lists them.\n",
    )


def test_the_version_is_told(run):
    code, out, _ = run("--version")
    assert code == 0
    assert re.fullmatch(r"bellwether \d+\.\d+\.\d+\n", out)


def test_the_help_is_whole_and_tells_the_exit_codes(run):
    code, out, _ = run("--help")
    assert code == 0
    for name, one in COMMANDS.items():
        assert re.search(rf"\n  {name} +{re.escape(one.summary)}\n", out), name
    assert "2 when what was given can't be read" in out


@pytest.mark.parametrize("name", COMMANDS)
def test_the_help_of_a_command_begins_as_the_list_says_and_shows_examples(run, name):
    _, out, _ = run(name, "--help")
    for example in (*COMMANDS[name].examples, *COMMANDS[name].file.splitlines()):
        assert example in out


def test_the_small_files_of_the_help_are_read(run):
    files = {"s_txt": "AMRAP 12\n10 push-ups\n", "r_toml": COMMANDS["preview"].file}
    code, out, _ = run("preview", "s.txt", "--roster", "r.toml", **files)
    assert (code, "Ilse" in out) == (0, True)
    code, out, _ = run("rank", "f.json", f_json=COMMANDS["rank"].file)
    assert (code, "1. Bo  7 rounds + 12" in out) == (0, True)
    dates = ("--from", "2026-03-02", "--to", "2026-03-08")
    code, out, _ = run("classes", "c.toml", *dates, c_toml=COMMANDS["classes"].file)
    assert (code, "Cal is reminded" in out) == (0, True)


def test_the_help_loads_no_command():
    told = subprocess.run(  # noqa: S603 - our own words
        [sys.executable, "-c", LOADED], capture_output=True, text=True, check=True
    ).stdout
    assert set(told.split()) == {"bot.commands.listed", "core.errors"}


def test_every_implement_is_listed_with_its_care(run):
    code, out, _ = run("implements")
    assert code == 0
    assert re.search(r"\n  kettlebell \(also: kb, kettle bell\)\n    Keep the floor", out)
    code, out, _ = run("implements", "--json")
    assert '"id": "dumbbell"' in out
