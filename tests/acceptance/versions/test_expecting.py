"""What a session comes to stands under the version; how to pace it is folded below."""

from tests.acceptance.people import answers_what_is_asked

SESSION = "Tuesday\n5 x 400 m run, rest 2 min"


async def test_a_version_says_in_one_line_what_it_comes_to(crew, ilse):
    await crew.gets(SESSION)
    await answers_what_is_asked(ilse)
    version = [one for one in await ilse.messages if "Your version" in one.text][-1]
    assert version.text.count("I'd expect") == 1
    assert version.text.index("I'd expect") < version.text.index("How to pace it")
