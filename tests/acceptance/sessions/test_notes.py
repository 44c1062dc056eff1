"""What a coach writes between the lines is read by everybody, at the block it belongs to."""

from tests.acceptance.people import answers_what_is_asked

SESSION = """Warm-up
2 rounds
10 arm circles
Skill
3 x 20 s plank
Take your time, everybody!
Strength
5 x 5 deadlifts @ 10 kg
rest as needed
AMRAP 12
10 push-ups
keep moving
12 squats

See you all on the quay!"""


def stand_in_order(text: str, *words: str) -> bool:
    """Each of the words comes somewhere after the one before it."""
    rest = text
    for word in words:
        assert word in rest, f"{word!r} isn't in {rest!r}"
        rest = rest.partition(word)[2]
    return True


async def test_every_block_and_its_notes_stand_in_order_in_post_and_version(crew, ilse):
    await crew.gets(SESSION)
    post = await crew.group.last_message
    assert stand_in_order(
        post.text,
        "Warm-up", "10 arm circles",
        "Skill", "20 s plank", "Note: Take your time, everybody!",
        "Strength", "5 deadlifts", "Note: rest as needed",
        "12 min", "10 push-ups", "12 squats", "Note: keep moving",
        "See you all on the quay!",
    )  # fmt: skip
    await answers_what_is_asked(ilse)
    version = await ilse.last_message
    assert stand_in_order(
        version.text,
        "Warm-up", "10 arm circles",
        "Skill", "20 s", "Take your time, everybody!",
        "rest as needed",
        "Main part", "12 minutes", "keep moving",
        "See you all on the quay!",
    )  # fmt: skip


async def test_several_notes_of_a_block_are_sentences(crew, ilse):
    await crew.gets("AMRAP 12\n10 push-ups\nkeep moving\n12 squats\nrest as needed")
    await answers_what_is_asked(ilse)
    assert "rest as needed. keep moving" in (await ilse.last_message).text


async def test_a_session_of_one_block_needs_no_name_over_it(crew, ilse):
    await crew.gets("AMRAP 12\n10 push-ups\n12 squats")
    await answers_what_is_asked(ilse)
    assert "Main part" not in (await ilse.last_message).text


async def test_work_that_was_not_read_is_marked_at_its_place_in_the_read_back_only(crew):
    await crew.coach.says(
        "AMRAP 12\n4 blorps\n10 push-ups\n7 zorb ups\n12 squats\n\nFor time\n30 burpees\n9 blorps"
    )
    read = (await crew.coach.hears("Here's how I read it")).text
    assert stand_in_order(
        read,
        "in nobody's version yet", "line 2: “4 blorps”",
        "12 min", "⚠ 4 blorps (not read)", "10 push-ups", "⚠ 7 zorb ups (not read)", "12 squats",
        "For time", "30 burpees", "⚠ 9 blorps (not read)",
    )  # fmt: skip
    await crew.coach.presses("Post without them")
    assert "(not read)" not in (await crew.group.hears("Tap for your own version")).text


async def test_a_line_that_stands_in_the_versions_is_not_said_to_be_in_nobodys(crew):
    await crew.coach.says("AMRAP 12\n10 push-ups\n30 plank")
    message = await crew.coach.hears("Here's how I read it")
    assert "Post now" in message.labels
    assert "in nobody's version" not in (read := message.text)
    assert stand_in_order(read, "I'm not sure of these lines", "“30 plank” (did you mean 30 s plank?)")


async def test_of_a_line_that_was_read_in_part_only_the_rest_is_marked(crew):
    await crew.coach.says("AMRAP 12\n10 push-ups, 5 florbles\n8 sit-ups")
    read = (await crew.coach.hears("Here's how I read it")).text
    assert "⚠ 5 florbles (not read)" in read
    assert read.count("10 push-ups") == 1
