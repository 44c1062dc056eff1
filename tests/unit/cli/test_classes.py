"""`bellwether classes`: dates and reminders from a file."""

import json

import pytest

from bot import cli

FILE = """
[[class]]
title = "Morning strength"
zone = "Europe/Berlin"
start = "2026-03-02T09:00"
rule = "FREQ=WEEKLY;BYDAY=MO"
minutes = 45
link = "https://example.org/room"
skip = ["2026-03-16"]

[[class]]
title = "Open house"
zone = "America/New_York"
start = 2026-03-25T18:30:00
skip = [2026-04-01]

[[athlete]]
name = "Ilse"
zone = "Europe/Lisbon"
lead_minutes = 90
quiet = ["22:00", "07:30"]

[[athlete]]
name = "Bo"
zone = "America/New_York"
quiet = ["21:00", "08:00"]
"""


def run(capsys, tmp_path, text=FILE, first="2026-03-01", last="2026-03-31", *more):
    path = tmp_path / "classes.toml"
    path.write_text(text)
    with pytest.raises(SystemExit) as ended:
        cli.main(["classes", str(path), "--from", first, "--to", last, *more])
    printed = capsys.readouterr()
    return ended.value.code, printed.out, printed.err


def document(capsys, tmp_path, *arguments):
    code, out, err = run(capsys, tmp_path, *arguments, "--json")
    assert (code, err) == (0, "")
    return json.loads(out)


def test_dates_are_local_and_in_utc_through_the_change_of_clocks(capsys, tmp_path):
    found = document(capsys, tmp_path, FILE, "2026-03-01", "2026-03-31")["occurrences"]
    assert [(one["class"], one["local"], one["utc"]) for one in found] == [
        ("Morning strength", "2026-03-02T09:00", "2026-03-02T08:00Z"),
        ("Morning strength", "2026-03-09T09:00", "2026-03-09T08:00Z"),
        ("Morning strength", "2026-03-23T09:00", "2026-03-23T08:00Z"),
        ("Open house", "2026-03-25T18:30", "2026-03-25T22:30Z"),
        ("Morning strength", "2026-03-30T09:00", "2026-03-30T07:00Z"),
    ]


def test_reminders_keep_out_of_everybodys_own_quiet_hours(capsys, tmp_path):
    found = document(capsys, tmp_path, FILE, "2026-03-02", "2026-03-02")["reminders"]
    ilse, bo = found
    assert (ilse["due_utc"], ilse["local"]) == ("2026-03-02T07:30Z", "2026-03-02T07:30")
    assert "end of the quiet hours (22:00-07:30)" in ilse["moved"]
    assert (bo["due_utc"], bo["local"]) == ("2026-03-02T01:59Z", "2026-03-01T20:59")
    assert "before the quiet hours" in bo["moved"]


def test_both_dates_are_included(capsys, tmp_path):
    found = document(capsys, tmp_path, FILE, "2026-03-25", "2026-03-30")["occurrences"]
    assert [one["local"][:10] for one in found] == ["2026-03-25", "2026-03-30"]


def test_where_no_moment_is_lawful_the_reason_is_told(capsys, tmp_path):
    text = FILE.replace('quiet = ["22:00", "07:30"]', 'quiet = ["02:00", "01:00"]')
    [ilse, _] = document(capsys, tmp_path, text, "2026-03-30", "2026-03-30")["reminders"]
    assert (ilse["due_utc"], ilse["local"]) == ("2026-03-30T00:59Z", "2026-03-30T01:59")
    text = text.replace("2026-03-02T09:00", "2026-03-01T14:00").replace("BYDAY=MO", "BYDAY=SU")
    [ilse, _] = document(capsys, tmp_path, text, "2026-03-29", "2026-03-29")["reminders"]
    assert ilse["due_utc"] is None  # Lisbon skips 01:00 to 02:00 this night
    assert "no moment" in ilse["moved"]


def test_people_read_it_too(capsys, tmp_path):
    code, out, _ = run(capsys, tmp_path, FILE, "2026-03-02", "2026-03-02")
    assert code == 0
    assert "Mon 2026-03-02 09:00 Europe/Berlin  Morning strength, 45 min" in out
    assert "Ilse is reminded Mon 07:30 Europe/Lisbon, moved to the end" in out


@pytest.mark.parametrize(
    ("old", "new", "told"),
    [
        ('rule = "FREQ=WEEKLY;BYDAY=MO"', 'rule = "weekly"', "class 1 (Morning strength): rule"),
        ('zone = "America/New_York"\nstart', 'zone = "Nowhere"\nstart', "class 2 (Open house): zone"),
        ("minutes = 45", 'minutes = "45"', "class 1 (Morning strength): minutes"),
        ("minutes = 45", "length = 45", "class 1 (Morning strength): length"),
        ('title = "Open house"\n', "", "class 2: title"),
        ("2026-03-25T18:30:00", "2026-03-25T18:30:00Z", "class 2 (Open house): start"),
        ("2026-03-25T18:30:00", "5", "class 2 (Open house): start"),
        ('"2026-03-02T09:00"', '"Monday"', "class 1 (Morning strength): start"),
        ('["2026-03-16"]', '["16 March"]', "class 1 (Morning strength): skip.1"),
        ('["22:00", "07:30"]', '["22:00"]', "athlete 1 (Ilse): quiet"),
        ('["22:00", "07:30"]', '["22:00", "25:00"]', "athlete 1 (Ilse): quiet"),
        ('["22:00", "07:30"]', '["22:00Z", "07:30"]', "athlete 1 (Ilse)"),
        ("lead_minutes = 90", "lead_minutes = -1", "athlete 1 (Ilse): lead_minutes"),
        ("[[athlete]]\nname", "[athlete]\nname", "classes.toml"),
        ("[[class]]\ntitle", "[[lesson]]\ntitle", "unknown key lesson"),
    ],
)  # fmt: skip
def test_what_is_wrong_is_told_with_its_place_and_ends_with_2(capsys, tmp_path, old, new, told):
    assert old in FILE
    code, out, err = run(capsys, tmp_path, FILE.replace(old, new, 1))
    assert (code, out) == (2, "")
    assert told in err


@pytest.mark.parametrize(
    ("first", "last"), [("soon", "2026-03-02"), ("2026-03-02", "2026-02-30"), ("2026-03-02", "2026-03-01")]
)
def test_dates_have_to_be_dates_in_order(capsys, tmp_path, first, last):
    code, _, err = run(capsys, tmp_path, FILE, first, last)
    assert code == 2
    assert "--" in err


def test_a_file_that_is_not_there_is_told(capsys, tmp_path):
    with pytest.raises(SystemExit) as ended:
        cli.main(["classes", str(tmp_path / "none.toml"), "--from", "2026-03-01", "--to", "2026-03-02"])
    assert ended.value.code == 2
    assert "none.toml" in capsys.readouterr().err
