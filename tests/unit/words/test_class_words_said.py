"""How classes, reminders and the evening are put in words."""

from datetime import date, datetime, time
from zoneinfo import ZoneInfo

import pytest

import bot.words.en
from bot.telegram.buttons import pack, unpack
from bot.words.en.classes.reminders import quiet_words, soon
from bot.words.en.classes.setting_up import rhythm
from bot.words.en.moments import span
from bot.words.wording import word
from core.calendar.values import Quiet
from core.desk.classes.commands import ConfirmClass, MoveDate, SetOwnZone, TellAttended
from core.desk.classes.says import ClassDate, ClassPlan, ClassReminder, NewClass, SignedUp
from core.desk.coaching.digest_says import ClassDigest, Digest, SessionDigest, Trained
from core.desk.joining.says import Arriving

BERLIN = ZoneInfo("Europe/Berlin")
START = datetime(2026, 3, 3, 18, 30, tzinfo=BERLIN)


def plan(**more):
    given = {"class_id": 1, "title": "Strength", "weekdays": (1,), "weeks": 1, "first": START}
    return ClassPlan(**{**given, "zone": "Europe/Berlin", "minutes": 45, "link": None, **more})


def meeting(**more):
    given = {"class_id": 1, "slot": 202603031830, "title": "Strength", "starts": START}
    return ClassDate(**{**given, "zone": "Europe/Berlin", "minutes": 45, **more})


@pytest.mark.parametrize(
    ("weekdays", "weeks", "words"),
    [
        ((1,), 1, "Tuesdays at 18:30"),
        ((0, 3), 1, "Mondays and Thursdays at 18:30"),
        ((1,), 2, "Tuesdays at 18:30, every other week"),
        (tuple(range(7)), 1, "every day at 18:30"),
        ((), 1, "once, on Tue 3 March 18:30"),
    ],
)
def test_how_often_a_class_is(weekdays, weeks, words):
    assert rhythm(plan(weekdays=weekdays, weeks=weeks)) == words


@pytest.mark.parametrize(
    ("minutes", "words"),
    [
        (1, "1 minute"),
        (45, "45 minutes"),
        (60, "1 hour"),
        (90, "1 hour and 30 minutes"),
        (1440, "1 day"),
        (0, "0 minutes"),
    ],
)
def test_spans_of_time(minutes, words):
    assert span(minutes) == words


@pytest.mark.parametrize(("left", "words"), [(60, "starts in 1 hour"), (0, "starts now"), (-3, "has begun")])
def test_a_reminder_that_comes_late_says_so(left, words):
    assert soon(left) == words
    said = ClassReminder(date=meeting(), minutes_left=left, session=None)
    assert words in word(said, "en").html


def test_quiet_hours_in_words():
    assert quiet_words(None) == "none"
    assert quiet_words(Quiet(start=time(22), end=time(7))) == "22:00 to 07:00"


def test_in_the_group_the_app_shows_each_readers_own_time():
    assert bot.words.en is not None
    html = word(NewClass(plan=plan(), changed=False, next=meeting()), "en").html
    assert (
        f'<tg-time unix="{int(START.timestamp())}" format="wDt">Tue 3 March 18:30, Berlin time</tg-time>'
        in html
    )


def test_a_title_is_escaped_and_a_toast_is_plain_and_short():
    html = word(NewClass(plan=plan(title="<b>&"), changed=False, next=meeting(title="<b>&")), "en").html
    assert "&lt;b&gt;&amp;" in html
    toast = word(SignedUp(date=meeting(title="<b>" * 99), coming=True, again=True, private=False), "en").html
    assert "<" not in toast
    assert len(toast) <= 200


@pytest.mark.parametrize(
    "command",
    [
        ConfirmClass(class_id=10**9, evening=True),
        MoveDate(class_id=10**9, slot=202603031830, to=202603041900),
        TellAttended(class_id=10**9, slot=202603031830, yes=False),
        SetOwnZone(zone="America/Argentina/ComodRivadavia"),
    ],
)
def test_buttons_of_classes_carry_their_whole_meaning(command):
    assert unpack(pack(command)) == command


def evening(**more):
    session = {"title": None, "trained": (), "opened": (), "unseen": (), "pains": (), "pain_count": 0}
    said = Digest(
        group="Harbour crew",
        day=date(2026, 3, 3),
        sessions=(SessionDigest(**{**session, **more}),),
        classes=(ClassDigest(date=meeting(), there=(), missing=(), untold=()),),
        needs=(),
        arriving=Arriving(),
    )
    return word(said, "en").html


def test_an_evening_without_news_shames_nobody():
    html = evening(unseen=("Ilse", "Bo", "Tam"))
    assert "No scores yet" in html
    assert "Haven't opened it: Ilse, Bo and Tam. That may be rest" in html
    assert "Nobody had signed up" in html
    assert "No question is waiting" in html


def test_pain_is_told_by_name_only_where_it_is_shared():
    html = evening(pains=(("Ilse", "left wrist"),), pain_count=3)
    assert "Ilse mentioned pain: left wrist." in html
    assert "2 people mentioned pain to me; I keep the details to myself" in html


def test_scores_are_listed_with_their_kind():
    html = evening(trained=(Trained(name="<Bo>", scores=("7 rounds + 12",), scaled=True),))
    assert "&lt;Bo&gt;: 7 rounds + 12, scaled" in html


def test_where_everybody_scaled_it_is_said_once():
    both = tuple(Trained(name=name, scores=("5 rounds",), scaled=True) for name in ("Ilse", "Bo"))
    html = evening(trained=both)
    assert "Trained: 2, all scaled" in html
    assert html.count("scaled") == 1
