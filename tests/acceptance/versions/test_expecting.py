"""What a session comes to stands under the version; how to pace it is folded below."""

from tests.acceptance.people import answers_what_is_asked


async def version_of(crew, ilse, board):
    await crew.gets(board)
    await answers_what_is_asked(ilse)
    return [one.text for one in await ilse.messages if "Your version" in one.text][-1]


async def test_a_version_says_in_one_line_what_it_comes_to_once_a_run_is_told(crew, ilse):
    await version_of(crew, ilse, "Tuesday\n5 x 400 m run, rest 2 min")
    await ilse.says("I can run 2400 m in 11 min")
    await ilse.hears("")
    await ilse.says("/today")
    version = await ilse.hears("Your version")
    assert version.text.count("I'd expect") == 1


async def test_what_nobody_can_tell_yet_is_said_so_once_and_in_no_figures(crew, ilse):
    version = await version_of(crew, ilse, "Tuesday\n5 x 400 m run, rest 2 min")
    assert version.count("I don't know yet") == 1
    assert "I'd expect" not in version
