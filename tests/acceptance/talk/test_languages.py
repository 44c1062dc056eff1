"""Each letter is worded in its reader's language, whoever or whatever caused it.

The tests' own language says everything backwards; what it has no words for comes in English.
"""

import re

import pytest

from bot.words import wording
from bot.words.wording import Worded, word
from core.desk.classes.says import AskAttended, ClassReminder, SignedUp
from core.desk.coaching.digest_says import Digest
from core.desk.profile.says import Forgotten
from core.desk.scores.says import ScoreEntered
from core.desk.sessions.says import GroupPost
from core.desk.versions.says import AskReview
from tests.acceptance.classes.test_classes import SESSION, berlin, set_up
from tests.acceptance.people import answers_what_is_asked

KINDS = (AskReview, AskAttended, ClassReminder, Digest, Forgotten, GroupPost, ScoreEntered, SignedUp)


@pytest.fixture(autouse=True)
def _backwards(monkeypatch):
    for kind in KINDS:
        monkeypatch.setitem(wording._wordings, ("xx", kind), in_reverse)


def in_reverse(said) -> Worded:
    worded = word(said, "en")
    return Worded(re.sub("<[^>]*>", "", worded.html)[::-1], worded.rows)


def reads_backwards(platform, person) -> None:
    """The person sets their app to the tests' language."""
    platform.users[person.id].json["language_code"] = "xx"


async def test_a_reminder_and_the_question_after_class_come_in_the_readers_language(crew, platform):
    weekly = await set_up(crew)
    ilse = await crew.has("Ilse")
    reads_backwards(platform, ilse)
    await ilse.presses("I'm in", on=weekly)
    await ilse.sees_toast("You're in: Tue 3 March 18:30, Berlin time."[::-1])
    await ilse.hears("You're in")
    await crew.room.travels_to(berlin("2026-03-03T17:30"))
    await ilse.hears("starts in 1 hour"[::-1])
    await crew.room.travels_to(berlin("2026-03-03T19:15"))
    await ilse.hears("Were you there?"[::-1])


async def test_the_digest_and_a_scheduled_post_are_each_in_their_readers_language(crew, platform):
    reads_backwards(platform, crew.coach)
    await crew.coach.says(SESSION)
    await crew.coach.hears("Here's how I read it")
    await crew.coach.presses("Post Tue 06:00")
    await crew.coach.hears("I'll post")
    await crew.room.travels_to(berlin("2026-03-03T06:00"))
    await crew.group.hears("Tap for your own version")
    await crew.room.travels_to(berlin("2026-03-03T20:00"))
    await crew.coach.hears("Your evening with Harbour crew"[::-1])


async def test_a_limit_is_asked_about_in_the_readers_language(crew, platform, ilse):
    reads_backwards(platform, ilse)
    await crew.gets()
    await answers_what_is_asked(ilse)
    await ilse.says("stopped after 5 rounds, my wrist hurts")
    await ilse.hears("I leave out what loads it")
    await crew.room.travels_to(berlin("2026-03-09T10:00"))
    await ilse.hears("wrist"[::-1])


async def test_what_the_coach_does_is_told_in_the_athletes_language(crew, platform, ilse):
    reads_backwards(platform, ilse)
    await crew.gets()
    await answers_what_is_asked(ilse)
    await crew.coach.says("Ilse got 7+12")
    await crew.coach.hears("Noted for Ilse")
    await ilse.hears("Marit noted your score for you: 7 rounds + 12."[::-1])


async def test_the_goodbye_to_somebody_erased_is_still_in_their_language(crew, platform, ilse):
    reads_backwards(platform, ilse)
    await ilse.says("/forget")
    await ilse.hears("Shall I erase everything")
    await ilse.presses("Yes, erase everything")
    await ilse.hears("Take care!"[::-1])


def test_a_language_of_a_country_is_said_in_the_language():
    assert word(Forgotten(), "xx-yy") == word(Forgotten(), "xx")
