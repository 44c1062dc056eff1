"""What a coach orders for athletes who are named, or for the one they have just looked at."""

from datetime import timedelta
from typing import Final

from core.desk.coached import Roster, coached_athletes
from core.desk.coaching.announcing import ask_word
from core.desk.coaching.ordering import carry_out_order, not_clear
from core.desk.coaching.ordering_says import AwayTold, Ordered
from core.desk.coaching.says import AthleteHeld, WeekEased
from core.desk.coaching.telling_for import offer_to_tell
from core.desk.outcome import Outcome
from core.desk.talk.not_got import left_over
from core.desk.visit import Visit
from core.notation.people import find_name, name_in_front, word_behind
from core.notation.talk.chat import is_like_a_score
from core.store.records import Membership
from core.understanding import acts as a
from core.understanding.ordering import told_in

# Whoever was looked at longer ago isn't `her` any more (estimate).
_DONE: Final = (Ordered, WeekEased, AwayTold, AthleteHeld)
IN_VIEW: Final = timedelta(hours=2)


async def as_order(visit: Visit, text: str, _: int | None) -> Outcome | None:
    """`no burpees for Tove this week`: done for each, with a word to them where one is wished; None for all else."""
    athletes = await coached_athletes(visit)
    if not athletes or "\n" in text.strip():
        return None
    looked_at = await in_view(visit, athletes)
    told = told_in(text, tuple(athletes), looked_at)
    named = [name_in_front(words, athletes) for words in told.left]
    if any(one is not None and is_like_a_score(one.rest) for one in named):
        return None
    if not told.orders:
        word = await word_to_them(visit, text, athletes[looked_at]) if looked_at else Outcome()
        return word if word.says else None
    outcome = words = Outcome()
    for one in told.orders:
        outcome += await carry_out_order(visit, one, athletes[one.person])
    for name in dict.fromkeys(one.person for one in told.orders):
        words += await word_to_them(visit, text, athletes[name])
    if any(isinstance(say.what, _DONE) for say in outcome.says):
        for name in told.of:
            outcome += await offer_to_tell(visit, athletes[name], ", ".join(told.why))
    left = () if words.says else told.left
    return outcome + words + (await left_over(visit, left) if left else Outcome())


async def word_to_them(visit: Visit, text: str, athlete: Membership) -> Outcome:
    words = word_behind(text, athlete.person.name)
    return await ask_word(visit, athlete, words) if words else Outcome()


async def in_view(visit: Visit, athletes: Roster) -> str | None:
    """Whose version the coach was shown last."""
    refs = await visit.uow.outbox.last_refs(visit.chat, visit.now - IN_VIEW)
    person = next((one["person"] for one in refs if "person" in one), None)
    return next((one.person.name for one in athletes.everybody if one.person_id == person), None)


async def about_athlete(visit: Visit, text: str) -> Outcome | None:
    """What may be an order for one of theirs, and can't be told; None where nobody of theirs is named."""
    athletes = await coached_athletes(visit)
    named = find_name(text, tuple(athletes)) if athletes else None
    return named and await look(visit, a.Order(text=text, person=named.name), athletes[named.name])


async def look(visit: Visit, act: a.Order, athlete: Membership) -> Outcome:
    """What is only a word to them is offered as one; an order that isn't clear changes nothing, and it is said so."""
    word = await word_to_them(visit, act.text, athlete)
    return word if word.says else await not_clear(visit, act, athlete)
