from bot.words.en.talk.plainly import PLAINLY
from core.desk.talk.asked import KEPT_BY, KINDS


def test_all_that_we_ask_can_be_told_in_plain_words():
    """What people ask is theirs to explain."""
    assert set(PLAINLY) == KINDS - KEPT_BY["any_time"]
