"""What a coach orders for athletes who are named, or for the one they have just looked at."""

import re
from collections.abc import Sequence
from dataclasses import replace
from typing import Final

from core.desk.coached import coached_athletes, coached_groups
from core.desk.coaching.announcing import ask_word
from core.desk.coaching.in_view import in_view
from core.desk.coaching.ordering import carry_out_order, nobody_called, not_clear
from core.desk.coaching.ordering_says import AwayTold, Ordered
from core.desk.coaching.says import AthleteCard, AthleteHeld, NoSuchPart, WeekEased
from core.desk.coaching.telling_for import offer_to_tell
from core.desk.outcome import Outcome
from core.desk.talk.not_got import left_over
from core.desk.visit import Visit
from core.notation.body.limits import read_limits
from core.notation.coaching.some_of_them import some_of_them
from core.notation.people import find_name, name_in_front, spellings, word_behind
from core.notation.second_person import BODY, spoken_to
from core.notation.talk.chat import is_like_a_score
from core.store.records import Membership
from core.understanding import acts as a
from core.understanding.ordering import strangers_in, told_in
from core.understanding.several import each_alone

_DONE: Final = (Ordered, WeekEased, AwayTold, AthleteHeld)


async def as_order(visit: Visit, text: str, _: int | None) -> Outcome | None:
    """`no burpees for Tove this week`: done for each, with a word to them where one is wished; None for all else."""
    athletes = await coached_athletes(visit)
    if not athletes or "\n" in text.strip():
        return None
    looked_at = await in_view(visit, athletes)
    strangers = strangers_in(text, tuple(athletes))
    told = told_in(text, (*athletes, *strangers), looked_at)
    named = [name_in_front(words, athletes) for words in told.left]
    if any(one is not None and is_like_a_score(one.rest) for one in named):
        return None
    if not told.orders:
        word = await word_to_them(visit, text, athletes[looked_at]) if looked_at else Outcome()
        return word if word.says else None
    outcome = words = Outcome()
    ordered = [one for one in told.orders if one.person not in strangers]
    for one in ordered:
        why = told.why_of(one.person)
        spared = read_limits(why).limits if why else None
        outcome += await carry_out_order(visit, one, athletes[one.person], spared or ())
    for name in dict.fromkeys(one.person for one in ordered):
        words += await word_to_them(visit, text, athletes[name])
    unknown = [name for name in strangers if any(one.person == name for one in told.orders)]
    outcome += nobody_called(visit, unknown, athletes)
    if any(isinstance(say.what, _DONE) for say in outcome.says):
        of = dict.fromkeys(name for one in told.why for name in one.of if name not in strangers)
        for name in of:
            outcome += await offer_to_tell(
                visit, athletes[name], as_said_of(name, told.why_of(name), tuple(of))
            )
    left = () if words.says else told.left
    return each_card_once(outcome) + words + (await left_over(visit, left) if left else Outcome())


def as_said_of(name: str, words: str, people: Sequence[str]) -> str:
    """What was told of somebody's body, said to them, and nothing of anybody else: `Bo and Tam have bad knees`."""
    called = "|".join(re.escape(one) for one in spellings([name]))
    own = re.sub(rf"(?<!\w)(?:{called})['\u2019]s (?={BODY}\b)", "your ", words, flags=re.IGNORECASE)
    alone = next((one for one in each_alone(own, people) if find_name(one, [name])), own)
    found = find_name(alone, [name])
    return spoken_to(found.rest if found else alone)


def each_card_once(done: Outcome) -> Outcome:
    """Of several orders for one athlete, their version as it is behind the last."""
    cards = {say.what.person: at for at, say in enumerate(done.says) if isinstance(say.what, AthleteCard)}
    says = tuple(
        say
        for at, say in enumerate(done.says)
        if not isinstance(say.what, AthleteCard) or cards[say.what.person] == at
    )
    return replace(done, says=says)


async def as_of_some(visit: Visit, text: str, _: int | None) -> Outcome | None:
    """`No push-ups for the beginners`: nobody knows who these are, and it is said how it goes by names."""
    who = some_of_them(text) if await coached_groups(visit) else None
    if who is None:
        return None
    athletes = tuple(await coached_athletes(visit))
    named = find_name(text, athletes) and not find_name(who, athletes)
    return None if named else visit.told(NoSuchPart(who=who))


async def word_to_them(visit: Visit, text: str, athlete: Membership) -> Outcome:
    words = word_behind(text, athlete.person.name)
    return await ask_word(visit, athlete, words) if words else Outcome()


async def about_athlete(visit: Visit, text: str) -> Outcome | None:
    """What may be an order for one of theirs, and can't be told; None where nobody of theirs is named."""
    athletes = await coached_athletes(visit)
    named = find_name(text, tuple(athletes)) if athletes else None
    return named and await look(visit, a.Order(text=text, person=named.name), athletes[named.name])


async def look(visit: Visit, act: a.Order, athlete: Membership) -> Outcome:
    """What is only a word to them is offered as one; an order that isn't clear changes nothing, and it is said so."""
    word = await word_to_them(visit, act.text, athlete)
    return word if word.says else await not_clear(visit, act, athlete)
