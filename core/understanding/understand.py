"""A message -> the acts it holds. Pure: everything is read, then chosen; what is doubtful is asked, never guessed."""

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, field, replace
from math import log
from typing import Final, cast

from core.understanding.acts import AnyAct, Sign, Stop
from core.understanding.choosing import ear
from core.understanding.clauses import Piece, pieces
from core.understanding.features import features
from core.understanding.lexicon import lexicon
from core.understanding.marks import Marked, mark
from core.understanding.mood import Mood, mood, tells
from core.understanding.openers import opened
from core.understanding.parting import begins, odds_of_places
from core.understanding.signs import alarm_in
from core.understanding.slots import body
from core.understanding.slots.abilities import lifts_something_else
from core.understanding.slots.answers import answers_to, given_the_benefit, needed, surely_told
from core.understanding.slots.fill import fill
from core.understanding.slots.stretch import Stretch
from core.understanding.slots.uses import crowded, unaccounted
from core.understanding.text import stem
from core.understanding.values import Context, Message, Understood

# These numbers were chosen on messages that the weights hadn't seen.
# From this chance on an act is taken; from the lower one on it is worth asking about.
TAKEN: Final = 0.65
ASKED: Final = 0.2
# From this one on it is worth a guess: none is better than a far one.
GUESSED: Final = 0.3
# From this chance on a hello or a thank-you stands by itself beside the matter.
_PLAIN: Final = 0.75
_NO_WORDS: Final = frozenset(".,;:-!()\n\"'")
# What it costs to part a message, and how much it counts how likely a telling begins there.
_PARTED: Final = 0.4
_BEGINS: Final = 0.4
_CHEAPEST, _DEAREST = 0.1, 3.0
# What each named thing costs that an act says nothing of.
_UNACCOUNTED: Final = 0.75
# And what it costs that a part of it is plainly something else.
_CLAIM: Final = 0.8
# The same where that is told so plainly that no chance is weighed.
_SURE_CLAIM: Final = 1.6
# Told plainly by one clause, these say nothing of its neighbours.
_BY_CLAUSE: Final = frozenset({"hurt", "sore", "well_again", "can"})
_SEVERAL: Final = 2
# How much it counts that a stretch tells something else besides what it is taken for.
_BESIDES: Final = 0.8
# What it costs that a stretch tells nothing, and each thing that is named in it.
_ASIDE: Final = 0.7
_NAMED_ASIDE: Final = 1.0
# Of how many pieces one telling may be; fewer where there are many, so that a long message stays quick.
_LONGEST_STRETCH, _SHORT_STRETCH, _MANY_PIECES = 6, 2, 8
_TRIED: Final = 4
# From so many words on what ends with a question mark asks something (estimate).
_A_QUESTION: Final = 4
_NOTHING_FITS: Final = 0.02
# What it costs that a question is taken for a part of what was told before it.
_ASKS_TOO: Final = 1.6
# Said beside the matter: left out where there is a matter.
BESIDE: Final = frozenset({"small_talk", "greeting", "thanks"})
# An act says nothing beside any of these.
_BY_OTHERS: Final[Mapping[str, frozenset[str]]] = {
    "has_nothing": frozenset({"has", "got", "lost", "elsewhere"}),
    "nothing_hurt": frozenset({"spares", "condition", "hurt"}),
    "help": frozenset({"how_to", "how_heavy", "my_version", "how_to_pace"}),
}
# What is still heard of a message that tells a stop sign.
_BESIDE_A_SIGN: Final = frozenset({"scored", "announce"})
_ANSWERS: Final = frozenset({"agrees", "declines"})
_JOINED: Final = frozenset(
    {"has", "got", "lost", "spares", "condition", "hurt", "well_again", "elsewhere", "session", "can"}
)
# What goes on with things that would be `has` by themselves.
_WITH_THINGS: Final = frozenset({"got", "elsewhere"})


@dataclass(frozen=True)
class Chosen:
    """A stretch with the acts it most likely is, the chance of that, and the next likely one.

    `is_sure`: told too plainly to be weighed. `mood`: how it is said; `supposed`: what it would tell if it were told.
    `silence`: what it costs that it tells nothing; `is_aside`: that is the cheapest way to read it.
    """

    start: int
    end: int
    name: str
    chance: float
    acts: tuple[AnyAct, ...]
    other: str = ""
    left_out: float = 0.0
    chances: Mapping[str, float] = field(default_factory=dict, repr=False)
    silence: float = 0.0
    is_aside: bool = False
    is_sure: bool = False
    mood: Mood = "told"
    supposed: tuple[AnyAct, ...] = ()

    @property
    def is_plain(self) -> bool:
        """Whether it is taken without asking."""
        return bool(self.acts) and not self.is_aside and self.chance >= needed(self.name, TAKEN)

    @property
    def cost(self) -> float:
        return -log(max(self.chance, _NOTHING_FITS)) + self.left_out


def understand(message: Message, context: Context | None = None) -> Understood:
    """Everything that a message tells, asks or wishes, in its order. Never raises for any text."""
    told = context or Context()
    marked = mark(
        message.text, told.people, asks_place=told.question == "zone", names_small=message.role == "coach"
    )
    if lifts_something_else(Stretch(marked, 0, len(marked.words), told)):
        told = told.model_copy(update={"session": None})
    sign = _sign(message, marked)
    order = None if sign else opened(message, marked)
    if order:
        return Understood(acts=(order,), language=marked.language)
    chosen = _joined(_segmented(marked, message, told), marked, told)
    taken = _consistent([one for one in chosen if one.is_plain], told)
    if sign:
        beside = [act for one in taken if one.name in _BESIDE_A_SIGN for act in one.acts]
        return Understood(acts=(sign, *beside), language=marked.language)
    doubtful = [one for one in chosen if not one.is_plain]
    acts = _each_once(act for one in taken for act in one.acts)
    return Understood(
        acts=acts,
        supposed=_each_once(act for one in chosen for act in one.supposed),
        asks=_only_asks(chosen),
        unread=tuple(words for one in doubtful if (words := _carries(marked, one, alone=not taken))),
        between=_between(doubtful) if not taken else (),
        language=marked.language,
    )


def _only_asks(chosen: Sequence[Chosen]) -> bool:
    """Whether nothing of it is told, a hello apart."""
    matter = [one for one in chosen if not one.is_aside and one.name not in BESIDE] or chosen
    return bool(matter) and all(one.mood != "told" for one in matter)


def _each_once(acts: Iterable[AnyAct]) -> tuple[AnyAct, ...]:
    """Without what says in other words what was said before."""
    return tuple({act.model_copy(update={"text": ""}): act for act in reversed([*acts])}.values())[::-1]


def _carries(marked: Marked, one: Chosen, *, alone: bool) -> str:
    """The words of a stretch that nobody understood.

    Nothing where a single word stands beside what was, or what names nothing, asks nothing and is like no act.
    """
    is_chat = one.is_aside and one.chance < ASKED and not _asks(marked, one)
    if is_chat and not alone and not _names_anything(marked, one):
        return ""
    words = sum(marked.text.tokens[at].kind != "mark" for at in range(one.start, one.end))
    begins = one.start + (not alone and words > 1 and marked.helps(one.start, "joint") is not None)
    return marked.text.words(begins, one.end) if alone or words > 1 else ""


def _asks(marked: Marked, one: Chosen) -> bool:
    """A question of its own, and no `ok?` behind what is told."""
    tokens = marked.text.tokens[one.start : one.end]
    words = sum(token.kind != "mark" for token in tokens)
    return words >= _A_QUESTION and any(token.word == "?" for token in tokens)


def _names_anything(marked: Marked, one: Chosen) -> bool:
    """A thing, or a number in figures: `dead 190`."""
    stretch = Stretch(marked, one.start, one.end, Context())
    figures = any(marked.text.tokens[at].kind == "number" for at in range(one.start, one.end))
    return figures or unaccounted("", stretch) > 0


def _sign(message: Message, marked: Marked) -> Sign | None:
    """A stop sign of the speaker's own, or of somebody whom a coach tells of; every doubt on the safe side."""
    found = body.signs(marked)
    text = message.text.strip()
    if message.role == "coach":
        person = next((one.value("person") for one in marked.marks if one.value("person")), None)
        return Sign(sign=cast("Stop", found[0][0]), person=person, text=text) if found else None
    if alarm_in(marked) not in {"told", "asked"}:
        return None
    return Sign(sign=cast("Stop", found[0][0]) if found else "faint", text=text)


def _segmented(marked: Marked, message: Message, context: Context) -> list[Chosen]:
    """The cheapest way to part the message: a stretch costs what its act is unsure by, each parting a little."""
    found = pieces(marked, odds_of_places(marked, begins()), boards=message.role == "coach")
    if not found:
        return []
    single = [_choose(marked, one, one, message, context) for one in found]
    best: list[tuple[float, list[Chosen]]] = [(0.0, [])]
    reach = _LONGEST_STRETCH if len(found) <= _MANY_PIECES else _SHORT_STRETCH
    for end in range(1, len(found) + 1):
        ways = []
        for start in range(max(0, end - reach), end):
            inner = single[start:end]
            one = (
                inner[0]
                if len(inner) == 1
                else _choose(marked, found[start], found[end - 1], message, context, inner)
            )
            cost = best[start][0] + one.cost + _parting(found[start])
            ways.append((cost, [*best[start][1], one]))
        ways.append(_set_aside(best[end - 1], single[end - 1], found[end - 1]))
        best.append(min(ways, key=lambda way: way[0]))
    return best[-1][1]


def _set_aside(so_far: tuple[float, list[Chosen]], one: Chosen, piece: Piece) -> tuple[float, list[Chosen]]:
    """The same with a piece more that tells nothing; several in a row are parted from the rest once."""
    cost, chosen = so_far
    goes_on = bool(chosen) and chosen[-1].is_aside
    parting = 0.0 if goes_on else _parting(piece)
    return cost + _ASIDE + one.silence + parting, [*chosen, replace(one, is_aside=True)]


def _claims(inner: Sequence[Chosen], name: str) -> float:
    """How much parts of a stretch are something else by themselves than what the whole of it is."""
    claims = (
        (_SURE_CLAIM if one.is_sure else _CLAIM) * (one.chance - one.chances.get(name, 0.0))
        for one in inner
        if one.acts
        and one.name not in {name, "small_talk"}
        and one.chance >= (_PLAIN if one.name in BESIDE else TAKEN)
    )
    return sum(claims)


def _parting(piece: Piece) -> float:
    return min(max(_PARTED - _BEGINS * piece.odds, _CHEAPEST), _DEAREST)


def _choose(
    marked: Marked,
    first: Piece,
    last: Piece,
    message: Message,
    context: Context,
    inner: Sequence[Chosen] = (),
) -> Chosen:
    """The likeliest act whose fields are told, and that accounts for what is named."""
    start, end = first.start, last.end
    found = features(marked, start, end, context.question, session=context.session is not None)
    heard = ear(message.role).hear(found)
    chances = heard.chances
    likely = sorted(chances, key=chances.__getitem__, reverse=True)[:_TRIED]
    stretch = Stretch(marked, start, end, context)
    sure = [one for one in surely_told(stretch) if len(inner) < _SEVERAL or one not in _BY_CLAUSE]
    besides = (*answers_to(context.question), *sure)
    likely += [name for name in besides if name in chances and name not in likely]
    silence = _BESIDES**2 * heard.alone[""] + _NAMED_ASIDE * unaccounted("", stretch)
    how: Mood = "told" if context.as_told or message.role == "coach" else mood(stretch)
    fitting: list[Chosen] = []
    supposed: tuple[AnyAct, ...] = ()
    for name in likely:
        chance = given_the_benefit(name, chances[name], stretch, sure=name in sure)
        # The likeliest first: what is less likely than the best costs can't be better.
        if len(fitting) > 1 and -log(max(chance, _NOTHING_FITS)) > min(one.cost for one in fitting):
            continue
        acts = fill(name, stretch)
        if name in BESIDE and how != "told":
            continue  # `hi, is it ok` asks, whatever stands in front
        if acts and not tells(name, how):
            supposed = supposed or (acts if chance >= TAKEN else ())
        elif acts:
            beside = 0.0 if name in sure else _BESIDES * heard.alone[name]
            left_out = _left_out(name, stretch, inner) + beside
            fitting.append(Chosen(start, end, name, chance, acts, "", left_out, chances, silence))
    if not fitting or not _is_known(stretch):
        return Chosen(start, end, likely[0], 0.0, (), "", 0.0, chances, silence, mood=how, supposed=supposed)
    fitting.sort(key=lambda one: one.cost)
    other = next((one.name for one in fitting[1:] if one.chance >= ASKED / 2), "")
    best = fitting[0]
    return replace(best, other=other, is_sure=best.name in sure, mood=how, supposed=supposed)


def _is_known(stretch: Stretch) -> bool:
    """Whether any word of it is known, or anything named: else nobody can tell what it is."""
    words = lexicon().words
    return bool(stretch.marks()) or any(
        token.kind == "mark" or token.word in words or stem(token.word) in words
        for token in stretch.marked.text.tokens[stretch.start : stretch.end]
        if token.word not in _NO_WORDS
    )


def _left_out(name: str, stretch: Stretch, inner: Sequence[Chosen]) -> float:
    asks = sum(_asks_too(one, name, stretch) for one in inner[1:])
    named = unaccounted(name, stretch) + crowded(name, stretch)
    return _UNACCOUNTED * named + _ASKS_TOO * asks + _claims(inner, name)


def _asks_too(one: Chosen, name: str, stretch: Stretch) -> bool:
    """Whether a later part of a stretch asks something else: `remind me at 6, and can somebody bring a rope?`."""
    part = replace(stretch, start=one.start, end=one.end)
    return _asks(stretch.marked, one) and mood(part) == "asked" and one.chances.get(name, 0.0) < TAKEN


def _joined(chosen: Sequence[Chosen], marked: Marked, context: Context) -> list[Chosen]:
    """Neighbours that tell more of the same are one telling."""
    found: list[Chosen] = []
    for one in chosen:
        last = found[-1] if found else None
        if last and last.is_aside and one.is_aside:
            likelier = max(last, one, key=lambda aside: aside.chance)
            found[-1] = replace(likelier, start=last.start, end=one.end)
        elif last and _goes_on(last, one):
            acts = fill(last.name, Stretch(marked, last.start, one.end, context))
            whole = Chosen(last.start, one.end, last.name, min(last.chance, one.chance), acts, last.other)
            found[-1:] = [whole] if acts or _tell_twice(last, one) else [last, one]
        else:
            found.append(one)
    return found


def _tell_twice(last: Chosen, one: Chosen) -> bool:
    """Whether both tell of one movement, the later perhaps without its name: which of them counts isn't told."""
    of_last, of_one = ({getattr(act, "movement", None) for act in two.acts} for two in (last, one))
    return None in of_one or not of_last.isdisjoint(of_one)


def _goes_on(last: Chosen, one: Chosen) -> bool:
    """More of the same, or the things that belong to what was begun: `at a hotel. DBs to 20, 1 bench`."""
    if last.is_aside or one.is_aside:
        return False
    same = last.name == one.name and one.name in _JOINED
    return same or (one.name == "has" and last.name in _WITH_THINGS and last.is_plain and one.is_plain)


def _consistent(taken: Sequence[Chosen], context: Context) -> list[Chosen]:
    """Without what only stands beside the matter, or what another act makes empty."""
    names = {one.name for one in taken}
    left = [one for one in taken if not _BY_OTHERS.get(one.name, frozenset()) & names]
    if context.question in {"consent", "screening"}:
        left = [one for one in left if one.name not in _ANSWERS or names <= _ANSWERS | BESIDE]
    elif not names <= _ANSWERS | BESIDE:
        left = [one for one in left if one.name not in _ANSWERS]
    return [one for one in left if one.name != "small_talk" or len(left) == 1]


def _between(doubtful: Sequence[Chosen]) -> tuple[str, ...]:
    """The two acts that one question would settle; none where nothing is near."""
    near = [one for one in doubtful if one.chance >= GUESSED and one.name not in BESIDE]
    if not near:
        return ()
    likeliest = max(near, key=lambda one: one.chance)
    return tuple(name for name in (likeliest.name, likeliest.other) if name and name not in BESIDE)
