"""Who may do what: nobody finds what is another group's, and nobody stays what they no longer are."""

from datetime import timedelta

import pytest

from bot.telegram.buttons import pack
from core.desk import commands as c
from core.desk.classes import commands as k
from core.desk.coaching import commands as o
from core.desk.profile import commands as w
from core.desk.versions import commands as v
from core.measures import MassUnit
from tests.acceptance.classes.test_classes import set_up
from tests.acceptance.people import SESSION, Crew, founded, passes_screening, start_link

GONE = "I can't find that any more"
FIRST = 1


@pytest.fixture
async def dusk(crew) -> Crew:
    """Another group, with another coach."""
    return await founded(crew.room, "Dusk crew", coach="Arjan")


async def joins_too(person, crew):
    await person.joins(crew.group)
    await person.opens(await start_link(crew.group))
    await person.hears("Nothing is posted yet")
    await person.hears("Nothing is posted yet")


def named_by_id():
    """Every command that names something, with the first ids there are."""
    return [
        c.SetZone(group=FIRST, zone="Europe/Rome"),
        c.SetUnits(group=FIRST, units=MassUnit.LB),
        c.GiveConsent(group=FIRST),
        c.SayCleared(group=FIRST),
        c.MoveDraft(session=FIRST, revision=1, group=2),
        c.PostSession(session=FIRST, revision=1),
        c.PostLater(session=FIRST, revision=1, minute=29_800_000),
        c.DiscardSession(session=FIRST, revision=1),
        c.MyVersion(session=FIRST),
        c.OwnNothing(session=FIRST),
        c.TellAbility(session=FIRST, movement="push-up", reps=5),
        c.ShowHow(version=FIRST),
        c.SeeBoard(session=FIRST),
        c.ConfirmScore(session=FIRST),
        c.FixScore(score=FIRST),
        c.TakeScoreBack(score=FIRST),
        c.ClaimAsWritten(score=FIRST),
        c.RateEffort(session=FIRST, effort=5),
        c.TellHurt(session=FIRST, hurt="no"),
        c.AllTold(session=FIRST),
        c.SeeScores(session=FIRST),
        c.LookAtScore(score=FIRST),
        c.MarkScore(score=FIRST, mark="not_counted"),
        k.ConfirmClass(class_id=FIRST),
        k.DropClass(class_id=FIRST),
        k.PlaceClass(class_id=FIRST, group=2),
        k.ManageClass(class_id=FIRST),
        k.EndClass(class_id=FIRST),
        k.CancelDate(class_id=FIRST, slot=202603031830),
        k.MoveDate(class_id=FIRST, slot=202603031830, to=202603031900),
        k.ComeTo(class_id=FIRST, slot=202603031830),
        k.StayAway(class_id=FIRST, slot=202603031830),
        k.TellAttended(class_id=FIRST, slot=202603031830, yes=True),
        v.ChangeLines(version=FIRST),
        v.OpenLine(version=FIRST, place=1),
        v.BeSick(version=FIRST),
        v.DayLasts(session=FIRST, kind="sick", until=739_700),
        v.AsUsual(session=FIRST),
        v.UndoEquipment(change=FIRST),
        o.SeeNeeds(session=FIRST, revision=1),
        o.SeeWhoGetsWhat(session=FIRST, revision=1),
        o.LookAtAthlete(session=FIRST, person=2),
        o.OrderLine(session=FIRST, person=2, place=1, step="menu"),
        o.AcceptVersion(session=FIRST, revision=1, person=2),
        o.HoldAthlete(group=FIRST, person=2, yes=True),
        o.CallWeekEasy(group=FIRST, monday=739_677, yes=True),
        o.SeeSession(session=FIRST),
        o.SetTolerance(group=FIRST, lighter=50, other_implement=True),
        o.AskAthlete(session=FIRST, person=2),
        o.WithdrawSession(session=FIRST, how="all"),
        w.SaveScores(session=FIRST),
        w.ShareLimits(group=FIRST, yes=True),
    ]


async def test_a_foreign_id_is_simply_not_found(crew, dusk):
    """The coach of one group presses everything there is with the ids of another's."""
    ilse = await crew.has("Ilse")
    await crew.gets()
    await ilse.says("7+12")
    await ilse.hears("Noted")
    await set_up(crew)
    under = (await dusk.coach.messages)[-1]
    for command in named_by_id():
        await dusk.coach.presses_data(under, pack(command))
        await dusk.coach.sees_toast(GONE)
    heard = [one.text for one in await dusk.coach.messages]
    assert not [text for text in heard if "Ilse" in text or "Harbour" in text]
    await crew.coach.says("/board")
    await crew.coach.hears("1. Ilse  7 rounds + 12")


async def test_a_stranger_is_told_nothing_of_a_class(crew):
    await set_up(crew)
    stranger = await crew.room.person("Stranger")
    await stranger.says("/help")
    help_ = await stranger.hears("I'm a helper for small training groups")
    for kind in (k.ComeTo, k.StayAway):
        for number in (1, 2):
            await stranger.presses_data(help_, pack(kind(class_id=number, slot=202603031830)))
            told = await stranger.sees_toast("")
            assert "18:30" not in told.text
            assert told.text.startswith((GONE, "That's for members"))


async def test_a_group_s_chat_shows_that_group_alone(crew, dusk):
    """Somebody who trains in two groups types in one of them."""
    ilse = await crew.has("Ilse")
    await joins_too(ilse, dusk)
    await crew.gets()
    await ilse.says("7+12")
    await ilse.hears("Noted in Harbour crew: 7 rounds + 12")
    await ilse.says("/board", in_=dusk.group)
    await dusk.group.hears("Nothing is posted yet")
    await ilse.says("/board", in_=crew.group)
    await crew.group.hears("1. Ilse  7 rounds + 12")


async def test_in_private_the_group_is_asked_for_where_several_are_meant(crew, dusk):
    ilse = await crew.has("Ilse")
    await joins_too(ilse, dusk)
    await crew.gets()
    await dusk.gets()
    await ilse.says("7+12")
    asked = await ilse.hears("You train in several groups")
    await ilse.presses("Dusk crew", on=asked)
    await ilse.hears("Noted in Dusk crew: 7 rounds + 12")
    await ilse.says("/board")
    asked = await ilse.hears("Several of your groups")
    await ilse.presses("Harbour crew", on=asked)
    await ilse.hears("No scores yet")
    await ilse.says("/today")
    await ilse.hears("Several of your groups")


async def test_who_is_admin_no_more_is_coach_no_more(crew, ilse):
    """The bot is no admin, so nobody tells it: it asks again."""
    bo = await crew.room.person("Bo")
    await bo.joins(crew.group)
    await crew.coach.promotes(bo, in_=crew.group)
    await passes_screening(bo, await start_link(crew.group))
    await crew.gets()
    await ilse.says("7+12")
    await ilse.hears("Noted")
    await bo.says("/board")
    board = await bo.hears("1. Ilse")
    await crew.coach.demotes(bo, in_=crew.group)
    await crew.room.travels(timedelta(minutes=2))
    await bo.presses("Look at the scores", on=board)
    await bo.sees_toast("Only the coach can do that")
    await bo.says("hold Ilse")
    await bo.hears("I didn't get “hold Ilse”")
    await bo.says("/board")
    assert not (await bo.hears("1. Ilse")).all_buttons


async def test_a_post_that_waits_goes_out_only_if_its_author_is_still_coach(crew):
    bo = await crew.room.person("Bo")
    await bo.joins(crew.group)
    await crew.coach.promotes(bo, in_=crew.group)
    await passes_screening(bo, await start_link(crew.group))
    await bo.says(SESSION)
    await bo.hears("Here's how I read it")
    await bo.says("post it tomorrow at 7")
    await bo.hears("I'll post")
    await crew.coach.demotes(bo, in_=crew.group)

    await crew.room.travels(timedelta(hours=24))

    await bo.hears("for Harbour crew has not gone out")
    waiting = await crew.coach.hears("Whoever set it doesn't coach the group any more")
    assert "10 push-ups" in waiting.text
    assert not any("My version" in message.labels for message in await crew.group.messages)
    await crew.coach.presses("Post now", on=waiting)
    await crew.group.hears("Tap for your own version")


async def test_told_of_a_change_it_counts_at_once(crew):
    """An admin bot hears who was promoted, demoted, removed."""
    await crew.coach.promotes_bot(crew.group)
    ilse = await crew.has("Ilse")
    await crew.gets()
    await crew.coach.promotes(ilse, in_=crew.group)
    await ilse.says("/board")
    await ilse.hears("No scores yet")
    await ilse.says("easy week")
    await ilse.hears("less for everybody")
    await crew.coach.demotes(ilse, in_=crew.group)
    await ilse.presses("Everybody in Harbour crew")
    await ilse.sees_toast("Only the coach can do that")
    await crew.coach.removes(ilse, from_=crew.group)
    await ilse.says("/board")
    await ilse.hears("That's for members of its group")
    await ilse.joins(crew.group)
    await ilse.says("/board")
    await ilse.hears("No scores yet")


async def test_who_left_finds_nothing_any_more(crew, ilse, posted):
    await ilse.says("7+12")
    noted = await ilse.hears("Noted")
    await ilse.leaves(crew.group)
    await ilse.presses("Take it back", on=noted)
    await ilse.sees_toast("That's for members of its group")
    await ilse.says("/today")
    await ilse.hears("I'm a helper for small training groups")


async def test_two_of_one_name_are_asked_about(crew):
    first, second = await crew.has("Bo"), await crew.has("Bo")
    await crew.gets()
    await crew.coach.says("Bo got 9+9")
    asked = await crew.coach.hears("more than one Bo here")
    labels = [one.label for one in asked.all_buttons]
    assert [label.split(",")[0] for label in labels] == ["Bo", "Bo (2)"]
    await crew.coach.presses(labels[0], on=asked)
    await crew.coach.hears("Noted for Bo: 9 rounds + 9")
    await first.hears("Marit noted your score for you")
    await crew.coach.says("Bo (2): deadlifts at most 30 kg")
    await crew.coach.hears("Bo (2)")
    await crew.coach.presses("Yes")
    await second.hears("30 kg")
    await crew.coach.says("hold Bo")
    await crew.coach.hears("more than one Bo here")
    await crew.coach.says("Bo (2)")
    await crew.coach.hears("Bo (2)'s versions first")


async def test_each_group_s_coach_sees_what_is_spared_only_if_told_so(crew, dusk):
    ilse = await crew.has("Ilse")
    await joins_too(ilse, dusk)
    await ilse.says("my left wrist hurts")
    await ilse.hears("wrist")
    await ilse.says("/me")
    me = await ilse.hears("here's what I know")
    await ilse.presses("Let my coach in Harbour crew", on=me)
    await ilse.hears("Your coach in Harbour crew sees from now on")
    for one, shown in ((crew, True), (dusk, False)):
        await one.gets()
        await one.coach.says("Ilse")
        assert ("wrist" in (await one.coach.hears("Ilse, as I'd do it")).text) is shown


async def test_words_for_a_coach_go_to_the_group_that_is_meant(crew, dusk):
    ilse = await crew.has("Ilse")
    await joins_too(ilse, dusk)
    await ilse.says("tell my coach I'm away on Friday")
    asked = await ilse.hears("the coach of which group")
    await ilse.presses("Dusk crew", on=asked)
    await dusk.coach.hears("away on Friday")
    assert not [one for one in await crew.coach.messages if "Friday" in one.text]


async def test_a_coach_reads_the_score_and_no_health(crew, ilse, posted):
    await ilse.says("9+3, my right knee hurts")
    await ilse.hears("Noted")
    await crew.coach.says("/board")
    await crew.coach.hears("1. Ilse")
    await crew.coach.presses("Look at the scores")
    await crew.coach.hears("Tap a score")
    await crew.coach.presses("Ilse: 9 rounds + 3")
    card = await crew.coach.hears("Typed: “9+3”, by Ilse")
    assert "knee" not in card.text


@pytest.mark.parametrize(
    ("typed", "edited", "noted"),
    [
        ("sorry 9+4", "sorry 9+5", "Put right: 9 rounds + 5"),
        ("9+4, wrist hurts", "I meant 8+4, wrist hurts", "Put right: 8 rounds + 4"),
    ],
)
async def test_an_edited_message_is_read_as_it_was_before(crew, typed, edited, noted, ilse, posted):
    said = await ilse.says(typed)
    await ilse.hears("9 rounds + 4")
    await ilse.edits(said, edited)
    await ilse.hears(noted)


async def test_a_stop_sign_added_to_a_score_is_heard(crew, ilse, posted):
    said = await ilse.says("9+4")
    await ilse.hears("9 rounds + 4")
    await ilse.edits(said, "9+4 but my chest hurts and I can't breathe")
    await ilse.hears("Stop")
