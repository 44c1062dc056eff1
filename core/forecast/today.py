"""A version that keeps to the minutes that there are today: as long as the forecast says, all of it counted."""

from collections.abc import Iterator

from core.athletes.values import Profile
from core.forecast.lasting import seconds_of
from core.forecast.people import People
from core.movements.lookup import Catalogue
from core.scaling.easing import NO_CUT, Cut
from core.scaling.orders import NO_ORDERS, Orders
from core.scaling.rising import rising_sets
from core.scaling.values import Version, VersionBlock, Withheld
from core.scaling.version import version_for
from core.scaling.warm_up import warm_up_for
from core.sessions.values import Block, BlockKind, Format, Session

_MINUTE_S = 60.0
# To put one part's things away and the next one's out; a rising set with its breather; what nobody notices (estimates).
BETWEEN_S, RISING_S, A_LITTLE_S = 45.0, 60.0, 30.0
# Of parts beside each other all get less before the last of them is left out; then the main one alone.
LESS, EVEN_LESS = (1.0, 0.8, 2 / 3, 0.5, 0.4), (1.0, 0.9, 0.8, 2 / 3, 0.5, 0.4, 0.3, 0.2, 0.1)
HALF = 0.5
# Before anything is left out whoever has little time rests a minute between sets (common practice, no source).
SHORT_REST_S = 60.0
SIDE = frozenset({BlockKind.SKILL, BlockKind.COOL_DOWN})


def version_today(
    session: Session,
    profile: Profile,
    catalogue: Catalogue,
    orders: Orders = NO_ORDERS,
    *,
    year: int | None = None,
) -> Version | Withheld:
    """The session as this athlete does it in the minutes that they said they have, warm-up and rests included.

    First the rests between sets and the warm-up get shorter, then what stands beside the work is left out, then
    there are fewer sets, then one part less at a time; the main part comes last. Without told minutes as `version_for`.
    """
    whole = version_for(session, profile, catalogue, orders, year=year)
    minutes = profile.today.minutes
    if minutes is None or isinstance(whole, Withheld):
        return whole
    people, there_s = People(profile, catalogue, year), minutes * _MINUTE_S
    made, _, cut = _fitted(session, whole, people, there_s, orders, year)
    ended = _ended(made, people, there_s - _before_s(session, made, people))
    is_less = min(cut.shares, default=1.0) < 1 or any(map(_rests_less, whole.blocks, ended.blocks))
    return ended.model_copy(update={"in_minutes": minutes}) if is_less else ended


def fitted_today(
    session: Session, profile: Profile, catalogue: Catalogue, orders: Orders, year: int | None
) -> tuple[Session, Cut]:
    """The session of which that version is made, and how much of each of its blocks."""
    whole = version_for(session, profile, catalogue, orders, year=year)
    minutes = profile.today.minutes
    if minutes is None or isinstance(whole, Withheld):
        return session, NO_CUT
    people = People(profile, catalogue, year)
    return _fitted(session, whole, people, minutes * _MINUTE_S, orders, year)[1:]


def _fitted(
    session: Session, whole: Version, people: People, there_s: float, orders: Orders, year: int | None
) -> tuple[Version, Session, Cut]:
    """The first version that fits into so many seconds, else the least there is; what it is made of."""
    made, cut = whole, NO_CUT
    if _before_s(session, whole, people) + length_s(whole, people) > there_s + A_LITTLE_S:
        session = with_short_rests(session)
    for cut in _cuts(session):
        tried = version_for(session, people.profile, people.catalogue, orders, year=year, cut=cut)
        assert isinstance(tried, Version), "minutes forbid nothing"
        made = tried
        if _before_s(session, made, people) + length_s(made, people) <= there_s + A_LITTLE_S:
            break
    return made, session, cut


def _rests_less(whole: VersionBlock, made: VersionBlock) -> bool:
    return (made.rest_s or 0) < (whole.rest_s or 0)


def with_short_rests(session: Session) -> Session:
    """The session with a minute between sets at most: what they are done with goes by that."""
    blocks = (
        block.model_copy(update={"rest_s": min(block.rest_s, SHORT_REST_S)})
        if block.format is Format.SETS and block.rest_s is not None
        else block
        for block in session.blocks
    )
    return session.model_copy(update={"blocks": tuple(blocks)})


def length_s(version: Version, people: People) -> float:
    """How long it takes the middle of whom they may turn out to be, from part to part."""
    lasting = [seconds_of(block, people) for block in version.blocks if not block.is_left_out]
    return sum(lasting) + BETWEEN_S * max(0, len(lasting) - 1)


def _before_s(session: Session, version: Version, people: People) -> float:
    """What comes before it where the coach wrote no warm-up."""
    warm_up = warm_up_for(session, version, people.profile, people.catalogue)
    if warm_up is None:
        return 0.0
    rising = rising_sets(version, people.profile, people.catalogue)
    return seconds_of(warm_up, people) + RISING_S * len(rising)


def _ended(version: Version, people: People, there_s: float) -> Version:
    """What is done for time ends with the minutes that the other parts leave."""
    over_s = there_s - length_s(version, people)
    return version.model_copy(
        update={"blocks": tuple(_with_cap(one, people, over_s) for one in version.blocks)}
    )


def _with_cap(block: VersionBlock, people: People, over_s: float) -> VersionBlock:
    if block.format is not Format.FOR_TIME or block.cap_s is None:
        return block
    left_s = max(_MINUTE_S, _MINUTE_S * ((seconds_of(block, people) + over_s) // _MINUTE_S))
    return block.model_copy(update={"cap_s": min(block.cap_s, left_s)})


def _cuts(session: Session) -> Iterator[Cut]:
    """Ever less of a session, the gentlest cut first."""
    blocks = session.blocks
    main = _main_of(blocks)
    places = [place for place in range(len(blocks)) if place != main]
    warm = [place for place in places if blocks[place].kind is BlockKind.WARM_UP]
    beside = [place for place in places if place not in warm and _is_beside(blocks[place], blocks[main])]
    works = [place for place in places if place not in warm and place not in beside]
    shares = dict.fromkeys(range(len(blocks)), 1.0)
    for step in _steps(main, warm, beside, works):
        shares |= step
        yield Cut(shares=tuple(shares.values()))


def _steps(main: int, warm: list[int], beside: list[int], works: list[int]) -> Iterator[dict[int, float]]:
    """Which parts get less next, and how much is left of them."""
    yield {}
    yield dict.fromkeys(warm, HALF)
    yield from ({place: 0.0} for place in reversed(beside))
    for left in range(len(works), 0, -1):
        gone = dict.fromkeys(works[left:], 0.0)
        yield from (gone | dict.fromkeys(works[:left], share) | {main: (1 + share) / 2} for share in LESS)
    yield from (dict.fromkeys(works, 0.0) | {main: share} for share in EVEN_LESS)
    yield dict.fromkeys(warm, 0.0)


def _main_of(blocks: tuple[Block, ...]) -> int:
    """The part that the day is for: the last main one that is scored, else the first that is work."""
    mains = [place for place, one in enumerate(blocks) if one.kind is BlockKind.MAIN and one.scored]
    works = [place for place, one in enumerate(blocks) if one.kind is not BlockKind.WARM_UP]
    return next(iter([*reversed(mains), *works]), 0)


def _is_beside(block: Block, main: Block) -> bool:
    """Whether it stands beside the work; where the day is for sets, unscored rounds are more of it."""
    return block.kind in SIDE or (not block.scored and main.format is not Format.SETS)
