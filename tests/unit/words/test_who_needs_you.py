"""Who needs a coach, of a large group: at most a screenful, everybody named or counted."""

from datetime import date

import bot.words.en  # noqa: F401 - the words under test
from bot.words.wording import word
from core.desk.coaching.says import Needing, SessionNamed
from core.desk.sessions.says import InNeed
from core.scaling.values import Because, Change, NeedsCoach

MONDAY = SessionNamed(title=None, day=date(2026, 3, 2), posted=True)
NO_BAR = NeedsCoach(block=1, line=1, written="10 pull-ups", change=Change.MOVEMENT, because=Because.NOT_OWNED)
HEALTH = NeedsCoach(because=Because.LIMIT)


def told(*firsts, **facts):
    people = tuple(
        InNeed(person=at, name=f"Ada {at}", first=first, held=False) for at, first in enumerate(firsts, 1)
    )
    return word(Needing(session_id=1, revision=1, of=MONDAY, people=people, **facts), "en")


def labels(worded):
    return [button.label for row in worded.rows for button in row]


def test_of_thirty_nine_have_a_button_and_each_reason_names_a_handful():
    worded = told(HEALTH, *[NO_BAR] * 29)
    assert labels(worded) == [*(f"Ada {at}" for at in range(1, 10)), "Who gets what"]
    assert "Ada 1: for your OK" in worded.html
    assert (
        "Ada 2, Ada 3, Ada 4, Ada 5, Ada 6 and 24 more: another kind instead (“10 pull-ups”)" in worded.html
    )


def test_a_few_are_all_named_and_nothing_is_said_of_more():
    worded = told(HEALTH, NO_BAR)
    assert labels(worded) == ["Ada 1", "Ada 2"]
    assert "more" not in worded.html


def test_who_was_stopped_stands_before_who_needs_a_look():
    html = told(NO_BAR, stopped=("Bo",)).html
    assert html.index("No session today: Bo") < html.index("These people need you")


def test_a_later_session_is_a_line_with_one_button():
    worded = told(*[NO_BAR] * 12, is_later=True)
    assert len(labels(worded)) == 1
    assert "12 need you" in worded.html
    assert "and 7 more" in worded.html
