"""Words for the personal version."""

from collections.abc import Callable, Mapping

from bot.words.en.today.different import different_words
from bot.words.en.versions.questions import understood
from bot.words.forecasts import NOT_KNOWN, forecast_words, pacing_words
from bot.words.headings import block_heading
from bot.words.reasons import reason_words
from bot.words.text import bullets, escape, fill, folded, listed, plural
from bot.words.versions import (
    caution_words,
    cue_words,
    eased_words,
    effort_words,
    in_minutes_words,
    in_turn,
    what_words,
    withheld_words,
)
from bot.words.wording import Button, Row, Worded, wording
from core.desk.commands import Command, MyVersion, SeeBoard, SeeScores, ShowHow
from core.desk.reference import catalogue, likes
from core.desk.versions.commands import AsUsual, ChangeLines, FreeLine, GiveTimer, TodayDiffers
from core.desk.versions.says import (
    AskWhichGroup,
    HowTo,
    LastTime,
    LinesTold,
    LineTold,
    NoSuchLine,
    NothingPosted,
    NoVersion,
    ShowVersion,
)
from core.measures import AmountUnit, MassUnit, as_marked, in_words
from core.scaling.values import Improvised, Version, VersionBlock, VersionLine
from core.sessions.values import EASY, Block, BlockKind, Session


def head(version: Version) -> str:
    """`Counts as written`: not quite, but within what the coach lets count."""
    if not version.as_written:
        return "Your version"
    return "Your version: as written" if version.is_exact else "Your version: counts as written"


@wording("en", ShowVersion)
def show_version(said: ShowVersion) -> Worded:
    version = said.version
    parts = [understood(said.understood)] if said.understood else []
    parts += [changed(said)] if said.changed else []
    title = said.session.title
    parts.append(
        f"<b>{head(version)}</b>"
        + (fill(" · {title}", title=title) if title else "")
        + (fill(" · {group}", group=said.group) if said.group else "")
    )
    parts.append(today(said))
    parts += blocks(said)
    parts += [bullets([escape(note) for note in said.notes])] if said.notes else []
    parts += [a_bag_does(said.improvised, said.units)] if said.improvised else []
    parts += steps(said)
    parts.append(ending(said))
    # Below the bare list, which is what somebody reads in the middle of a workout.
    parts += [folded(one) for one in (*warm_up(said), *pacing(said), *whys(said), *cautions(version))]
    return Worded("\n\n".join(part for part in parts if part), buttons(said))


OF_SESSION: Mapping[str, Callable[[int], Command]] = {
    "version": lambda session: MyVersion(session=session),
    "board": lambda session: SeeBoard(session=session),
    "scores": lambda session: SeeScores(session=session),
}


@wording("en", AskWhichGroup)
def ask_which_group(said: AskWhichGroup) -> Worded:
    rows = tuple((Button(title[:50], OF_SESSION[said.then](session)),) for session, title in said.sessions)
    return Worded("Several of your groups have a session now. Which one?", rows)


def a_bag_does(improvised: Improvised, units: MassUnit) -> str:
    """Whoever has no weight has a bag."""
    return fill(
        "No weight at hand? A bag with bottles or books in it does for the {movement}, about {load}. Write "
        "<i>I got a {load} backpack</i> and I'll make it part of your version.",
        movement=plural(improvised.movement),
        load=as_marked(improvised.load_kg, units),
    )


# What changes a version without a step of one line.
NO_STEP = frozenset({"pain", "lacking", "undone"})


def changed(said: ShowVersion) -> str:
    """What the athlete changed just now, so that it is seen first."""
    assert said.changed is not None, "the caller looked"
    if said.changed.place is None or said.changed.cause in NO_STEP:
        return "Here's your new version."
    _, line = said.version.spots[said.changed.place - 1]
    return fill("Changed: <i>{line}</i>", line=what_words(line, said.units))


def today(said: ShowVersion) -> str:
    """What is different today, and how much less is asked; why, where that isn't said by then."""
    what = dict.fromkeys(different_words(one) for one in said.different)  # two may call one week easy
    told = [fill("Today: {what}.", what=listed(list(what)))] if what else []
    easing, effort = said.version.easing, said.version.effort_at_most
    is_less = easing is not None and said.version.is_less
    if easing is not None and is_less and effort is not None:
        told.append(f"{eased_words(easing, is_told=bool(told))}, at an effort of {effort_words(effort)}.")
    elif effort is not None:
        told.append(f"An effort of {effort_words(effort)}.")
    if said.version.in_minutes is not None:
        told.append(in_minutes_words(said.version))
    return " ".join(told)


def steps(said: ShowVersion) -> list[str]:
    """A much heavier thing than they know, said before they take it."""
    return [
        fill(
            "<b>A big step:</b> {now} for {movement}; so far it was {before}. Warm up with {before}, try a few easy ones, "
            "and go back to {before} as soon as a repetition looks different.",
            now=as_marked(line.load_kg, said.units),
            before=as_marked(one.from_kg, said.units),
            movement=plural(line.movement),
        )
        for one in said.steps
        for line in [said.version.spots[one.place - 1][1]]
        if line.load_kg is not None
    ]


def warm_up(said: ShowVersion) -> list[str]:
    if said.warm_up is None:
        return []
    rounds = "two easy rounds" if said.warm_up.rounds == 2 else "one easy round"  # noqa: PLR2004
    lines = [escape(what_words(line, said.units)) for line in said.warm_up.lines]
    parts = [f"Warm-up, {rounds}:\n{bullets(lines)}"]
    if said.rising:
        rising = [escape(what_words(line, said.units)) for line in said.rising]
        parts.append(f"Then up to the heavy ones, with a breather after each:\n{bullets(rising)}")
    return parts


def blocks(said: ShowVersion) -> list[str]:
    """Every block under its name where there are several, with its notes: what to do, and nothing else."""
    shown = []
    for one in said.version.blocks:
        written = said.session.blocks[one.block - 1]
        head = (
            f"<b>{escape(part_words(said.session, one.block))}</b>\n" if len(said.session.blocks) > 1 else ""
        )
        note = fill("\n<i>{note}</i>", note=written.notes) if written.notes else ""
        shown.append(f"{head}{block(one, said.units)}{note}{expected(said, one)}")
    return shown


def expected(said: ShowVersion, one: VersionBlock) -> str:
    """What it comes to, where that can be told nearly enough, or else the pace alone; else once what would tell it."""
    outlook = said.outlooks[one.block - 1] if said.outlooks else None
    if outlook is None or outlook.is_foregone:
        return ""
    if outlook.is_telling:
        what = forecast_words(outlook.forecast)
        return fill("\nI'd expect {what} of you.", what=what) if outlook.forecast.is_to_plan_with else ""
    is_first = outlook is next(
        each for each in said.outlooks if each and not (each.is_telling or each.is_foregone)
    )
    return f"\n{NOT_KNOWN}" if is_first else ""


def pacing(said: ShowVersion) -> list[str]:
    """How to get there, for whoever looks it up before they begin."""
    told = [one for one in said.outlooks if one is not None and one.is_to_pace_by]
    words = [words for one in told for words in pacing_words(one)]
    return [fill("<b>How to pace it</b>\n{words}", words=" ".join(words))] if words else []


def whys(said: ShowVersion) -> list[str]:
    """Why each line is as it is, and what was done of it last time; a limit is named once."""
    spots = said.version.spots
    last = {one.place: last_words(one, spots[one.place - 1][1], said.units) for one in said.last}
    spared = set[str]()
    told = []
    for place, (_, line) in enumerate(said.version.spots, 1):
        words = " ".join(filter(None, (reason_words(line, said.units, spared), last.get(place, ""))))
        told += [fill("{what}: {words}", what=what_words(line, said.units), words=words)] if words else []
    return [f"<b>Why it's so</b>\n{bullets(told)}"] if told else []


def part_words(session: Session, number: int) -> str:
    """How a block is headed: `Strength`, `Main 2`; as in the post, so that both can be told apart alike."""
    block, place = session.blocks[number - 1], session.places[number - 1]
    if block.name:
        return block.name
    kind = block.kind
    if place is None:
        return PARTS[kind]
    return f"{'Main' if kind is BlockKind.MAIN else PARTS[kind]} {place}"


PARTS = {
    BlockKind.WARM_UP: "Warm-up",
    BlockKind.SKILL: "Skill",
    BlockKind.STRENGTH: "Strength",
    BlockKind.MAIN: "Main part",
    BlockKind.COOL_DOWN: "Cool-down",
}


def block(one: VersionBlock, units: MassUnit) -> str:
    """What to do, with the coach's words about it."""
    told = [f"{what_words(line, units)}{under(line, units)}" for line in one.every_line]
    turn = f"\n{escape(turn_words(one, units))}" if one.turn else ""
    return f"{escape(block_heading(one))}\n{bullets([escape(words) for words in in_turn(one, told)])}{turn}"


def under(line: VersionLine, units: MassUnit) -> str:
    """The coach's words about a line, in a row of their own."""
    cue = cue_words(line, units)
    return f"\n    {cue}" if cue else ""


def turn_words(one: VersionBlock, units: MassUnit) -> str:
    """`You share the dumbbell with Bo: begin with ... while Bo begins with ...`; plain text."""
    turn = one.turn
    assert turn is not None, "the caller looked"
    thing = catalogue().implement(turn.implement).label
    who = turn.shared_with or "the other of you"
    shared = f"You share the {thing}" + (f" with {turn.shared_with}" if turn.shared_with else "")
    own = ", and set it to your own weight when you take it" if turn.settings else ""
    if turn.begin is None or turn.they_begin is None:
        return f"{shared}: take turns, one works while the other rests{own}."
    mine, theirs = (one.lines[place - 1] for place in (turn.begin, turn.they_begin))
    return (
        f"{shared}: begin with “{what_words(mine, units)}” while {who} begins with “{theirs.written}”{own}."
    )


def last_words(last: LastTime, now: VersionLine, units: MassUnit) -> str:
    """`(Last time, 3 March: 10 kg, 12 at a time, 7 rounds + 12.)`; what was only told is no training. Plain text."""
    day = f"{last.on:%-d %B}"
    if last.line is None:
        load = [] if last.load_kg is None else [in_words(last.load_kg, units)]
        return f"(You told me on {day}: {', '.join([*load, f'{last.reps:g} in a row'])}.)"
    score = [] if last.score is None else [last.score.in_words(units)]
    return f"(Last time, {day}: {', '.join([*as_done(last.line, now, units), *score])}.)"


def as_done(before: VersionLine, now: VersionLine, units: MassUnit) -> list[str]:
    """What was done of a movement: in full where it was another way, else its load and amount."""
    if (before.variant, before.implement) != (now.variant, now.implement):
        return [what_words(before, units)]
    load = [] if before.load_kg is None else [in_words(before.load_kg, units)]
    amount = [] if before.amount is None else [f"{amount_words(before)} at a time"]
    return [*load, *amount] or [what_words(before, units)]


def amount_words(line: VersionLine) -> str:
    return f"{line.amount:g}" if line.unit is AmountUnit.REPS else f"{line.amount:g} {line.unit}"


def buttons(said: ShowVersion) -> tuple[Row, ...]:
    change = Button("Change a line", ChangeLines(version=said.version_id))
    differs = Button("Today is different", TodayDiffers(version=said.version_id))
    timer = (Button("Timer", GiveTimer(session=said.session_id)),) if said.is_timed else ()
    return (*undo(said), (how(said.version_id), change), (differs, *timer))


def undo(said: ShowVersion) -> tuple[Row, ...]:
    """Where a line has just been changed."""
    if said.changed is None or said.changed.place is None or said.changed.cause in NO_STEP:
        return ()
    return ((Button("Undo that", FreeLine(version=said.version_id, place=said.changed.place)),),)


def cautions(version: Version) -> list[str]:
    lines = [escape(caution_words(one)) for one in version.cautions]
    return ["Take care:\n" + bullets(lines)] if lines else []


def ending(said: ShowVersion) -> str:
    stop = "Stop if something hurts or feels wrong."
    scored = [said.session.blocks[one.block - 1] for one in said.version.blocks if one.scored]
    if not scored:
        how = "steady" if (said.version.effort_at_most or 0) > EASY else "easy"
        return f"Keep it {how} today: nothing to chase, no rank, rest whenever you like. {stop}"
    told = [f"<code>{one}</code>" for one in dict.fromkeys(map(example, scored))]
    if len(told) > 1:
        return f"{stop} Done? Write me what you did in each part, like {listed(told)}."
    return f"{stop} Done? Write me your score, like {told[0]}{meaning(scored[0])}."


def meaning(block: Block) -> str:
    """`7+12` says nothing to somebody new."""
    rounds, plus, more = example(block).partition("+")
    return f" ({rounds} rounds and {more} more)" if plus else ""


def example(block: Block) -> str:
    """How a score of the block as it was written is told; plain text."""
    return likes(block)[0]


def how(version_id: int) -> Button:
    return Button("Show me how", ShowHow(version=version_id))


@wording("en", NoVersion)
def no_version(said: NoVersion) -> Worded:
    words = escape(withheld_words(said.withheld))
    if said.ill_in is None:
        return Worded(words)
    return Worded(words, ((Button("I'm well again", AsUsual(session=said.ill_in)),),))


@wording("en", NothingPosted)
def nothing_posted(said: NothingPosted) -> Worded:
    if said.coach:
        return Worded("Nothing is posted yet. Send me today's session, as you'd write it on a board.")
    return Worded("Nothing is posted yet. As soon as your coach posts a session, tap “My version” under it.")


@wording("en", HowTo)
def how_to(said: HowTo) -> Worded:
    told = [card("/".join(one)) for one in said.variants]
    own = ["As you have it today:", card("/".join(said.own))] if said.own else []
    return Worded("\n\n".join([*told, *own]))


@wording("en", LinesTold)
def lines_told(said: LinesTold) -> Worded:
    """Each line with its reason and its last time; as written needs no reason but that it fits."""
    row = (
        Button("Change a line", ChangeLines(version=said.version_id)),
        Button("My whole version", MyVersion(session=said.session_id)),
    )
    if not said.lines:
        return Worded(NOTHING_TO_TELL[said.about], (row,))
    return Worded(bullets([told_line(one, said.units) for one in said.lines]), (row,))


@wording("en", NoSuchLine)
def no_such_line(said: NoSuchLine) -> Worded:
    row = (
        Button("Change a line", ChangeLines(version=said.version_id)),
        Button("My whole version", MyVersion(session=said.session_id)),
    )
    return Worded(fill("There's no {what} in your version of this session.", what=said.movement), (row,))


NOTHING_TO_TELL = {
    "why": "Nothing was changed for you: it's all as your coach wrote it.",
    "how_heavy": "There's no weight to choose today: what you lift is yourself, or you find the load as you go.",
}


def told_line(one: LineTold, units: MassUnit) -> str:
    why = reason_words(one.line, units) or "As your coach wrote it."
    last = "" if one.last is None else last_words(one.last, one.line, units)
    return fill(
        "<b>{what}</b>: {words}", what=what_words(one.line, units), words=" ".join(filter(None, (why, last)))
    )


def card(variant_id: str) -> str:
    movement, variant = catalogue().variant(variant_id)
    cue = variant.cue
    name = movement.id.capitalize()
    is_itself = variant.label == plural(movement.id)
    return "\n".join(
        [
            fill("<b>{name}</b>", name=name if is_itself else f"{name}: {variant.label}"),
            fill("Start: {start}", start=cue.start),
            fill("It counts when: {counts}", counts=cue.counts),
            *[fill("• {cue}", cue=one) for one in cue.cues],
            fill("Common slip: {fault}", fault=cue.fault),
            fill("Careful: {caution}", caution=cue.caution),
        ]
    )
