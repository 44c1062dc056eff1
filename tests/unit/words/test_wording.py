"""Everything that can be said has words in English."""

import pytest

import bot.words.en
from bot.words.en.common import REFUSALS
from bot.words.text import escape, fill, listed
from bot.words.wording import worded_kinds
from core.desk import errors
from core.desk import says as common
from core.desk.classes import says as classes
from core.desk.coaching import says as digest
from core.desk.coaching import says as overseeing
from core.desk.joining import says as groups
from core.desk.joining import says as joining
from core.desk.outcome import Said
from core.desk.profile import says as own
from core.desk.scores import says as scores
from core.desk.sessions import says as sessions
from core.desk.today import says as reports
from core.desk.today import says as today_says
from core.desk.versions import says as adjusting
from core.desk.versions import says as versions
from core.errors import TooMuch

MODULES = (
    adjusting,
    today_says,
    classes,
    common,
    digest,
    groups,
    joining,
    overseeing,
    own,
    reports,
    scores,
    sessions,
    versions,
)


def said_kinds() -> set[type[object]]:
    found: set[type[object]] = {
        value
        for module in MODULES
        for value in vars(module).values()
        if isinstance(value, type) and issubclass(value, Said) and value is not Said
    }
    parts: set[type[object]] = {versions.Understood, adjusting.LineSaid}  # of others, never said alone
    return found - parts


def test_every_said_kind_has_english_words():
    assert bot.words.en is not None
    assert said_kinds() - worded_kinds("en") == set()


def test_every_refusal_has_words():
    refusals = {
        value
        for value in vars(errors).values()
        if isinstance(value, type) and issubclass(value, errors.Declined) and value is not errors.Declined
    }
    assert refusals | {TooMuch} == set(REFUSALS)


@pytest.mark.parametrize("name", ["<b>Bo</b>", "a & b", "</code>", "😀 <"])
def test_whatever_people_are_called_is_escaped(name):
    assert fill("<b>{name}</b>", name=name) == f"<b>{escape(name)}</b>"
    assert "<b>Bo" not in escape(name)


def test_names_are_listed_as_people_say_them():
    assert listed([]) == ""
    assert listed(["Ilse"]) == "Ilse"
    assert listed(["Ilse", "Bo", "Tam"]) == "Ilse, Bo and Tam"
