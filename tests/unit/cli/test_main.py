import pytest

from bot import cli
from core.errors import InputError


def run(*arguments):
    with pytest.raises(SystemExit) as ended:
        cli.main(arguments)
    return ended.value.code


def test_help_is_asked_for_by_its_name(capsys):
    assert run("--help") == 0
    assert "one session for all" in capsys.readouterr().out


def test_an_unknown_command_ends_with_2_and_says_so_on_standard_error(capsys):
    assert run("juggle") == 2
    printed = capsys.readouterr()
    assert printed.out == ""
    assert "juggle" in printed.err


def test_an_expected_error_is_one_line_on_standard_error_and_ends_with_2(capsys, monkeypatch):
    def refuse(**_):
        raise InputError("line 3", "no such movement")

    monkeypatch.setattr(cli, "assembled", lambda _: refuse)
    assert run("preview") == 2
    assert capsys.readouterr().err == "line 3: no such movement\n"


def test_the_help_lists_every_command(capsys):
    run("--help")
    printed = capsys.readouterr().out
    assert [name for name in cli.COMMANDS if f"\n  {name} " not in printed] == []


@pytest.mark.parametrize("name", cli.COMMANDS)
def test_each_command_is_found_by_its_name(name, capsys):
    assert run(name, "--help") == 0
    assert f" {name} [OPTIONS]" in capsys.readouterr().out


MISTYPED = {
    ("read", "message", "hi", "--question", "foo"): "--question: foo is none of equipment, limits,",
    ("read", "message"): "TEXT|-: this is missing.",
    ("read", "mesage"): "what you typed: no such command 'mesage'. Did you mean 'message'? ",
    ("preview", "x", "--rooster", "y"): "--rooster: there is no such option. Did you mean --roster?",
    ("read", "score", "7", "--for"): "--for: something has to stand behind it.",
    ("read", "score", "7", "--for", "x", "--block", "q"): "--block: should be a whole number, not q.",
    ("movements", "a", "b"): "what you typed: ",
}


@pytest.mark.parametrize("typed", MISTYPED, ids=" ".join)
def test_what_was_mistyped_is_told_in_one_line_with_where_to_look(typed, capsys):
    assert run(*typed) == 2
    printed = capsys.readouterr().err
    assert printed.startswith(MISTYPED[typed])
    assert printed.count("\n") == 1
    assert "--help` shows how it goes." in printed


def test_the_help_of_a_group_of_commands_is_shown_to_whoever_types_only_its_name(capsys):
    assert run("read") == 2
    assert "Usage" in capsys.readouterr().err
