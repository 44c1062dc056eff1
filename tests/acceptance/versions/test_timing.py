"""A clock to train by: asked for in words or tapped under the version, heard and read."""

import io

import soundfile

from tests.acceptance.people import answers_what_is_asked

TWO_CLOCKS = "Tuesday\nA) EMOM 10\n5 burpees\n\nB) AMRAP 12\n10 push-ups\n12 air squats"


async def with_a_version(crew, *session):
    ilse = await crew.has("Ilse")
    await crew.gets(*session)
    await answers_what_is_asked(ilse)
    return ilse


async def seconds_of(person, message):
    with soundfile.SoundFile(io.BytesIO(await person.downloads(message))) as sound:
        return sound.frames / sound.samplerate


async def test_a_timer_is_asked_for_in_words_and_comes_as_a_voice_message(crew):
    ilse = await with_a_version(crew)
    await ilse.says("can you give me a timer?")
    timer = await ilse.hears("three short tones count you in")
    assert timer.kind == "voice"
    assert "6:00: half of it" in timer.text
    assert "12:00: done" in timer.text
    assert 12 * 60 < await seconds_of(ilse, timer) < 13 * 60


async def test_it_is_under_the_version_too(crew):
    ilse = await with_a_version(crew)
    await ilse.presses("Timer")
    assert (await ilse.hears("three short tones count you in")).kind == "voice"


async def test_of_several_clocks_the_first_comes_and_the_others_can_be_tapped(crew):
    ilse = await with_a_version(crew, TWO_CLOCKS)
    await ilse.says("timer")
    first = await ilse.hears("every 1:00, 10 times in all")
    await ilse.presses("Timer: ", on=first)
    second = await ilse.hears("12:00: done")
    assert second.kind == "voice"


async def test_sets_have_no_clock_and_no_button(crew):
    ilse = await with_a_version(crew, "Tuesday\n5 x 5 push-ups, rest 2 min")
    version = [one for one in await ilse.messages if "Your version" in one.text][-1]
    assert "Timer" not in version.labels
    await ilse.says("timer")
    await ilse.hears("There's no clock in it that I could count")


async def test_whoever_has_no_version_gets_that_first(crew, ilse, posted):
    await ilse.says("give me a timer")
    await ilse.hears("What do you have to train with?")


async def test_a_coach_gets_the_clock_of_the_session_as_it_is_written(crew, posted):
    await crew.coach.says("give me a timer")
    assert (await crew.coach.hears("12:00: done")).kind == "voice"
