"""Somebody new in the room, with the real bot: from a session on a board to a version of one's own."""

from tests.acceptance.people import SESSION


async def test_a_coach_posts_and_somebody_new_gets_to_their_first_question(crew, visits, platform):
    phone = await visits.open(390, 844)
    await phone.click("#chats button >> nth=0")
    await phone.fill("#write-own", SESSION)
    await phone.click("#own button:has-text('Send')")
    await phone.wait_for_selector("#own :text('how I read it')")
    await phone.click("#own button:has-text('Post now')")
    await phone.wait_for_selector("#own :text('Posted to')")
    await phone.click("#own .back")
    await phone.wait_for_selector("#chats .news", state="attached")
    await phone.click("text=Come in and tap My version")
    await phone.wait_for_selector(".toasts :text('You are Alva now.')")
    await phone.wait_for_selector("#own :text('May I keep these notes?')")
    assert await phone.evaluate("document.getElementById('me').selectedOptions[0].text") == "Alva"
    await phone.click("#own button:has-text('Yes, keep them')")
    await phone.wait_for_selector("#own :text('Are you 18 or older?')")
    assert [user.name for user in platform.users.values()][-1] == "Alva"
