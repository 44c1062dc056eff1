"""Everybody can take along and erase what is theirs by one command; coaches take their scores along."""

import csv
import io
import json
from datetime import timedelta
from pathlib import Path

import pytest

from core.store import tables
from core.store.personal import GROUPS_OWN, OWN
from tests.acceptance.people import answers_what_is_asked, passes_screening, start_link
from tests.acceptance.versions.test_changing_a_version import has_a_version
from tests.acceptance.worlds import world
from tests.support.durable import eventually

NAME = "Wilhelmina Öst"
SPOKEN = ("Wilhelmina", "Öst", "zzequipmentzz", "zzchatterzz", "zzscorezz")


async def lives_here(crew, name=NAME):
    """Somebody with a version, a score, an effort, pain, a changed line and a lot of talk."""
    person = await crew.has(name)
    await crew.gets()
    await answers_what_is_asked(person)
    await person.says("7+12 zzscorezz")
    await person.hears("")
    await person.says("7+12")
    await person.hears("How hard was")
    await person.presses("7")
    await person.hears("Did anything hurt?")
    await person.presses("Something hurts")
    await person.hears("Where does it hurt?")
    await person.says("left wrist")
    await person.hears("sore wrist")
    await person.says("zzchatterzz and nothing else")
    await person.hears("")
    await person.says("bought a zzequipmentzz")
    await person.hears("")
    return person


async def erases(person):
    await person.says("/forget")
    await person.hears("Shall I erase everything")
    await person.presses("Yes, erase everything")
    await person.hears("Everything about you is erased")


def files_of(settings):
    """Every byte that stands in the database's files."""
    places = [Path(settings.database + end) for end in ("", "-wal")]
    return b"".join(place.read_bytes() for place in places if place.exists())


def found_in(content, words):
    spellings = {word: (word.encode(), json.dumps(word)[1:-1].encode()) for word in words}
    return [word for word, ways in spellings.items() if any(way in content for way in ways)]


# the coach's file


@world
async def ilse(crew):
    return await lives_here(crew)


async def test_a_coach_takes_the_scores_along_as_a_file(crew):
    ilse, bo = await crew.has("Ilse"), await crew.has("=Bo")
    await crew.gets()
    for athlete, score in ((ilse, "7+12"), (bo, "8+1")):
        await answers_what_is_asked(athlete)
        await athlete.says(score)
        await athlete.hears("Noted")
    await crew.coach.says("/board")
    await crew.coach.hears("Scoreboard")
    await crew.coach.presses("As a file")
    seen = await crew.coach.hears("for a spreadsheet")
    content = await crew.coach.downloads(seen)
    assert seen.file.name.endswith(".csv")
    rows = list(csv.DictReader(io.StringIO(content.decode("utf-8-sig"))))
    assert [(row["name"], row["score"], row["scaled"]) for row in rows] == [
        ("'=Bo", "8 rounds + 1", "yes"),
        ("Ilse", "7 rounds + 12", "yes"),
    ]
    assert rows[0]["when"].startswith("2026-03-02 07:0")  # Berlin's clock


async def test_the_coachs_file_tells_whose_day_was_shorter(crew):
    ilse, bo = await crew.has("Ilse"), await crew.has("Bo")
    await crew.gets()
    for athlete, score in ((ilse, "3+2"), (bo, "6+1")):
        await answers_what_is_asked(athlete)
        if athlete is ilse:
            await ilse.says("I only have 5 minutes today")
            await ilse.hears("Your version")
        await athlete.says(score)
        await athlete.hears("Noted")
    await crew.coach.says("/board")
    await crew.coach.presses("As a file", on=await crew.coach.hears("Scoreboard"))
    seen = await crew.coach.hears("“time they had” is filled in where somebody's day was shorter")
    content = await crew.coach.downloads(seen)
    rows = csv.DictReader(io.StringIO(content.decode("utf-8-sig")))
    assert {row["name"]: row["time they had"] for row in rows} == {"Ilse": "4 min", "Bo": ""}


async def test_only_the_coach_takes_the_scores_along(crew):
    ilse = await crew.has("Ilse")
    await crew.gets()
    await answers_what_is_asked(ilse)
    await ilse.says("7+12")
    noted = await ilse.hears("Noted")
    await ilse.presses_data(noted, "wf:1")
    await ilse.sees_toast("Only the coach")


# export


async def test_everything_about_somebody_comes_as_one_document_in_private(crew, ilse):
    await ilse.says("/export")
    seen = await ilse.hears("Everything I've stored about you")
    mine = json.loads(await ilse.downloads(seen))
    assert mine["person"][0]["name"] == NAME
    assert mine["training_group"][0]["title"] == "Harbour crew"
    assert mine["profile"][0]["body"]["limits"] == ["wrist"]
    assert {one["movement"] for one in mine["evidence"]} >= {"push-up"}
    assert mine["score"][-1]["text"] == "7+12"
    assert mine["report"][0]["effort"] == 7
    assert mine["version"][0]["document"]["blocks"]
    assert "zzchatterzz" in json.dumps(mine["inbox"])


async def test_what_hurts_is_not_kept_before_consent(crew):
    tam = await crew.room.person("Tam")
    await tam.joins(crew.group)
    await tam.opens(await start_link(crew.group))
    await tam.presses("No", on=await tam.hears("May I keep these notes?"))
    await crew.gets()
    await tam.says("6+10, my knee hurts", in_=crew.group, reply_to=await crew.group.last_message)
    await tam.hears("I keep nothing of you without your yes")
    await tam.says("/export")
    mine = json.loads(await tam.downloads(await tam.hears("Everything I've stored about you")))
    assert not mine.get("report")
    assert not mine.get("score")


async def test_what_was_written_in_the_group_is_taken_along_and_nobody_elses(crew):
    ilse, bo = await crew.has("Ilse"), await crew.has("Bo")
    await crew.gets()
    post = next(one for one in await crew.group.messages if "Tap for your own version" in one.text)
    await ilse.says("zzmine", in_=crew.group, reply_to=post)
    await bo.says("zzhis", in_=crew.group, reply_to=post)
    await ilse.says("/export")

    file = json.loads(await ilse.downloads(await ilse.hears("Everything")))

    said = [row["text"] for row in file["written_in_groups"]]
    assert said == ["zzmine"]


async def test_an_export_holds_nothing_of_anybody_else(crew):
    bo = await crew.has("Bodil")
    await lives_here(crew)
    await bo.says("/export")
    seen = await bo.hears("Everything I've stored about you")
    content = await bo.downloads(seen)
    assert found_in(content, SPOKEN) == []


async def test_who_asks_in_the_group_is_answered_in_private(crew):
    ilse = await crew.has("Ilse")
    await ilse.says("/export", in_=crew.group)
    await crew.group.hears("Let's do that in private")


async def test_a_stranger_can_export_too(bellwether, room):
    stranger = await room.person("Stranger")
    await stranger.opens(await room.start_link())
    await stranger.hears("Hello!")
    await stranger.says("/export")
    seen = await stranger.hears("Everything I've stored about you")
    assert "person" in json.loads(await stranger.downloads(seen))


# forgetting


async def test_who_says_no_keeps_everything(crew):
    ilse = await crew.has("Ilse")
    await ilse.says("/forget")
    await ilse.hears("Shall I erase everything")
    await ilse.presses("No, keep it")
    await ilse.hears("everything stays as it is")
    await ilse.says("/me")
    await ilse.hears("Ilse, here's what I know")


async def test_nothing_in_the_whole_file_names_who_was_forgotten(crew, settings, ilse):
    await crew.coach.says(f"{NAME} 8+1")
    await crew.coach.hears("")
    await crew.coach.says("/board")
    await crew.coach.hears("Scoreboard")
    await crew.coach.presses("Look at the scores")
    await crew.coach.hears("Tap a score")
    bo = await crew.has("Bo")
    await bo.hears("What do you have")
    await bo.says("/board")  # the board names everybody, and is pressed under by others
    await bo.hears("Scoreboard")
    assert set(found_in(files_of(settings), SPOKEN)) == set(SPOKEN)
    await erases(ilse)
    await crew.group.hears("No scores yet")
    # The last words on their way are let go once they have arrived.
    await eventually(lambda: found_in(files_of(settings), SPOKEN) == [])


async def test_others_and_the_board_go_on_as_if_they_had_never_been(crew, bo, ilse):
    await answers_what_is_asked(bo)
    await bo.says("6+1")
    await bo.hears("6 rounds + 1")  # nobody is told that they came last
    await erases(ilse)
    board = await crew.group.hears("Bo")
    while NAME in board.text:
        board = await crew.group.hears("Bo")
    await bo.says("6+2")
    await bo.hears("")
    await crew.coach.says("/board")
    seen = await crew.coach.hears("Scoreboard")
    assert "Bo" in seen.text
    assert NAME not in seen.text


async def test_who_comes_back_starts_afresh(crew, ilse):
    await erases(ilse)
    await ilse.says("/me")
    await ilse.hears("not asked yet")
    await passes_screening(ilse, await start_link(crew.group))
    await ilse.hears("What do you have to train with?")
    await crew.room.travels(timedelta(days=2))
    await ilse.says("a chair")
    await ilse.hears("I've noted: a chair.")


async def test_the_number_of_a_forgotten_chat_goes_a_day_later(crew, settings, ilse):
    await erases(ilse)
    await crew.room.travels(timedelta(days=1, minutes=1))
    number = str(ilse.id).encode()
    await eventually(lambda: number not in files_of(settings))


async def test_pressing_yes_twice_is_harmless(crew, settings, ilse):
    await erases(ilse)
    await ilse.presses_again()
    await ilse.hears("Everything about you is erased")
    await eventually(lambda: found_in(files_of(settings), SPOKEN) == [])


async def test_a_coach_who_is_forgotten_leaves_what_the_group_needs(crew, settings):
    ilse = await crew.has("Ilse")
    await crew.gets()
    await crew.coach.says("AMRAP 9\n10 push-ups\n200 m run")
    await crew.coach.hears("Here's how I read it")
    await erases(crew.coach)
    await answers_what_is_asked(ilse)
    await ilse.says("7+12")
    await ilse.hears("Noted")
    await eventually(lambda: found_in(files_of(settings), ["Marit", "AMRAP 9"]) == [])


async def test_somebody_else_is_named_still(crew, settings):
    await lives_here(crew, "Bodil")
    ilse = await crew.has("Ilse")
    await ilse.hears("What do you have")
    await erases(ilse)
    assert found_in(files_of(settings), ["Bodil"]) == ["Bodil"]


def references_to(name):
    return {
        (table.name, column.name)
        for table in tables.Row.metadata.tables.values()
        for column in table.columns
        for key in column.foreign_keys
        if key.column.table.name == name
    }


def test_every_table_that_refers_to_a_person_is_thought_of():
    theirs = {(table.name, "person_id") for table in OWN} | {("chat", "person_id")}
    assert references_to("person") == theirs | {(table.name, column) for table, column in GROUPS_OWN.items()}


@pytest.mark.parametrize(
    ("name", "known"),
    [
        ("chat", {"training_group", "question", "outbox", "score"}),
        ("version", {"adjustment", "score"}),
        ("score", {"score_mark", "score_health"}),
        ("document", {"version", "session_revision"}),
        ("outbox", {"outbox", "attempt", "file"}),
    ],
)
def test_every_table_that_hangs_on_theirs_is_thought_of(name, known):
    assert {table for table, _ in references_to(name)} == known


async def test_what_is_kept_is_told_with_the_ways_to_have_it(crew):
    ilse = await has_a_version(crew)
    await ilse.says("what do you do with my data?")
    told = await ilse.hears("I keep what you tell me")
    assert "/export" in told.text
    assert "/forget" in told.text
    await ilse.presses("Let my coach see what I spare", on=told)
    await ilse.hears("Your coach sees from now on")
    await ilse.says("who sees my injuries?")
    await ilse.hears("You've allowed it")


async def test_who_sees_a_weight_may_be_asked_at_the_question_for_it(crew):
    ilse = await crew.has("Ilse")
    await crew.gets()
    await ilse.presses("My version")
    await ilse.hears("What do you have")
    await ilse.says("who sees my weight?")
    await ilse.hears("Only you see your weight")
    await ilse.says("a chair")
    await ilse.hears("I've noted: a chair")


async def test_erasing_may_be_asked_for_in_words(crew):
    ilse = await crew.has("Ilse")
    await ilse.says("delete my data")
    await ilse.presses("No, keep it", on=await ilse.hears("Shall I erase everything"))
    await ilse.hears("everything stays as it is")
