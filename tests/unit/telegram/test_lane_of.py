import pytest

from bot.telegram.receiver import lane_of

CHAT, USER = {"id": -100}, {"id": 7}


@pytest.mark.parametrize("kind", ["message", "edited_message", "my_chat_member", "chat_member"])
def test_what_happens_in_a_chat_keeps_its_place_there(kind):
    assert lane_of({"update_id": 1, kind: {"chat": CHAT, "from": USER}}) == -100


def test_a_press_keeps_its_place_in_the_chat_of_its_message():
    assert lane_of({"update_id": 1, "callback_query": {"from": USER, "message": {"chat": CHAT}}}) == -100


@pytest.mark.parametrize("who", ["from", "user"])
def test_what_has_no_chat_goes_by_its_person(who):
    assert lane_of({"update_id": 1, "inline_query": {who: USER}}) == 7


@pytest.mark.parametrize(
    "update", [{"update_id": 1}, {"update_id": 1, "news": {}}, {"update_id": 1, "news": 3}]
)
def test_what_is_not_understood_has_a_lane_too(update):
    assert lane_of(update) == 0
