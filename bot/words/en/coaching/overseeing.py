"""Words between a coach and single athletes."""

from datetime import date, timedelta
from typing import Final

from bot.words.en.coaching.faults import about as noted
from bot.words.en.coaching.faults import lift
from bot.words.en.sessions.landing import by_why, rows_by_why
from bot.words.en.talk.passing_on import in_their_words
from bot.words.text import bullets, escape, fill, listed
from bot.words.versions import limit_names, need_words, what_words
from bot.words.wording import Button, Row, Worded, in_rows, wording
from core.desk.coaching.commands import (
    AcceptVersion,
    AskAthlete,
    CallWeekEasy,
    HoldAthlete,
    LetGoHeavier,
    LookAtAthlete,
    MakeStanding,
    OrderLine,
    PutVolumeFirst,
    SeeNeeds,
    SeeWhoGetsWhat,
)
from core.desk.coaching.ordering_says import NothingToLookAt
from core.desk.coaching.says import (
    AnswerPassedOn,
    AskWho,
    AskWhoseWeek,
    AthleteAnswers,
    AthleteAsked,
    AthleteCard,
    AthleteHeld,
    CoachAsks,
    LeewayGiven,
    LineChoices,
    MadeStanding,
    Namesake,
    Needing,
    NobodyHeld,
    NobodyNeedsYou,
    NothingFurther,
    SessionNamed,
    WeekEased,
)
from core.desk.commands import MeanMember
from core.scaling.values import Because, VersionLine

# So many fill a screen; whoever is left is shown once these are settled.
_A_SCREEN: Final = 9


@wording("en", Needing)
def needing(said: Needing) -> Worded:
    if said.is_later:
        return needing_later(said)
    shown = said.people[:_A_SCREEN]
    buttons = [
        Button(one.name[:40], LookAtAthlete(session=said.session_id, person=one.person)) for one in shown
    ]
    parts = [for_session(said.of)]
    if said.stopped:
        stopped = "No session today: {names}. I've told them how to go on; a kind word from you may help."
        parts.append(fill(stopped, names=listed(said.stopped)))
    if said.people:
        rows = rows_by_why(said.people)
        more = "" if len(said.people) == len(shown) else " Whoever has no button yet gets one as you say OK."
        tap = f"Tap one to see what I'd give them, and change it if you like.{more}"
        parts.append(f"These people need you:\n{bullets(rows[:_A_SCREEN])}\n{tap}")
    rows_of_buttons = in_rows(buttons, 3)
    if len(said.people) > len(shown):
        gets = SeeWhoGetsWhat(session=said.session_id, revision=said.revision)
        rows_of_buttons.append((Button("Who gets what", gets),))
    return Worded("\n\n".join(parts), tuple(rows_of_buttons))


def needing_later(said: Needing) -> Worded:
    """A session behind another in one line."""
    need = "1 needs" if len(said.people) == 1 else f"{len(said.people)} need"
    text = f"{for_session(said.of)}: {need} you, {escape(by_why(said.people))}."
    see = SeeNeeds(session=said.session_id, revision=said.revision)
    return Worded(text, ((Button(f"Who needs you {said.of.day:%A}", see),),))


def for_session(one: SessionNamed) -> str:
    """`Tuesday, posted`; HTML."""
    group = fill(" for {group}", group=one.group) if one.group else ""
    state = "posted" if one.posted else "not posted yet"
    return fill("<b>{title}</b>", title=one.title or f"{one.day:%A, %-d %B}") + f"{group}, {state}"


@wording("en", NobodyNeedsYou)
def nobody_needs_you(said: NobodyNeedsYou) -> Worded:
    if not said.sessions:
        return Worded("Nothing is posted yet, and there is no draft, so nobody needs you.")
    return Worded("Nobody needs you for:\n" + bullets([for_session(one) for one in said.sessions]))


@wording("en", AskWhoseWeek)
def ask_whose_week(said: AskWhoseWeek) -> Worded:
    monday = said.monday.toordinal()
    rows = tuple(
        (Button(f"Everybody in {title}"[:50], CallWeekEasy(group=group, monday=monday, yes=said.yes)),)
        for group, title in said.groups
    )
    what = "an easy week, less for everybody and no ranks" if said.yes else "as usual again"
    return Worded(
        f"{week_of(said.monday)}: {what}. For whom? Nothing changes before your tap; for one it's <i>easy week for Ilse</i>.",
        rows,
    )


@wording("en", WeekEased)
def week_eased(said: WeekEased) -> Worded:
    who = (
        fill("<b>{name}</b>", name=said.athlete)
        if said.athlete
        else fill("everybody in {title}", title=said.title)
    )
    back = CallWeekEasy(
        group=said.group, monday=said.monday.toordinal(), yes=not said.yes, person=said.person
    )
    if not said.yes:
        return Worded(f"{week_of(said.monday)} is as usual for {who}.", ((Button("Easy after all", back),),))
    text = (
        f"{week_of(said.monday)} is an easy week for {who}: about two thirds of the work at the usual weights, an effort "
        "of six at most, no ranks. Write your sessions as always; versions asked for from now on have less in them."
    )
    return Worded(text, ((Button("As usual after all", back),),))


def week_of(monday: date) -> str:
    """`Monday 30 November to Sunday 6 December`."""
    sunday = monday + timedelta(days=6)
    return f"{monday:%A %-d %B} to {sunday:%A %-d %B}"


@wording("en", AthleteCard)
def athlete_card(said: AthleteCard) -> Worded:
    lines = [numbered(place, line, said) for place, (_, line) in enumerate(said.version.spots, 1)]
    parts = [fill("<b>{name}</b>, as I'd do it:", name=said.version.athlete), "\n".join(lines)]
    if said.needs:
        parts.append("Why you:\n" + bullets([escape(need_words(need, said.units)) for need in said.needs]))
    if said.spares:
        parts.append(fill("Spares: {limits}.", limits=limit_names(said.spares, dict(said.sides))))
    if said.words:
        parts.append(in_their_words(said.words))
    if said.faults:
        parts.append("Your notes:\n" + bullets([escape(noted(one, said.units)) for one in said.faults]))
    if said.held:
        parts.append("You hold their versions: nothing goes out to them before your OK.")
    if said.goes_heavier:
        parts.append("They may go heavier than you write, where it suits them.")
    if said.volume_first:
        parts.append("Where it's too much they do fewer, before it gets easier.")
    parts.append("Tap a number to change that line.")
    places = range(1, len(lines) + 1)
    numbers = [Button(str(place), order(said, place, "menu")) for place in places]
    rows = in_rows(numbers, 5)
    rows.append(
        (
            Button("OK", AcceptVersion(session=said.session_id, revision=said.revision, person=said.person)),
            Button("Ask them", AskAthlete(session=said.session_id, person=said.person)),
        )
    )
    rows.append((hold_button(said),))
    rows.extend(leeway_buttons(said))
    rows += [(lift(one, said.version.athlete),) for one in said.faults]
    return Worded("\n\n".join(parts), tuple(rows))


def hold_button(said: AthleteCard | AthleteHeld) -> Button:
    """Always the other way than it is now."""
    label = "Stop holding their versions" if said.held else "Hold for my OK, always"
    return Button(label, HoldAthlete(group=said.group, person=said.person, yes=not said.held))


def leeway_buttons(said: AthleteCard) -> list[tuple[Button, ...]]:
    """To let them go heavier where that would help, and to take back what they may do."""
    would_help = any(one.suits_kg is not None or one.because is Because.TOO_LIGHT for one in said.needs)
    whom = {"group": said.group, "person": said.person}
    rows: list[tuple[Button, ...]] = []
    if said.goes_heavier:
        rows.append((Button("No heavier than written", LetGoHeavier(**whom, yes=False)),))
    elif would_help:
        rows.append((Button("Let them go heavier, always", LetGoHeavier(**whom, yes=True)),))
    if said.volume_first:
        rows.append((Button("An easier way first again", PutVolumeFirst(**whom, yes=False)),))
    return rows


@wording("en", LeewayGiven)
def leeway_given(said: LeewayGiven) -> Worded:
    kind = LetGoHeavier if said.of == "heavier" else PutVolumeFirst
    back = kind(group=said.group, person=said.person, yes=not said.yes)
    label = "Take it back" if said.yes else "Let them after all"
    return Worded(fill(LEEWAY[said.of, said.yes], name=said.athlete), ((Button(label, back),),))


LEEWAY = {
    ("heavier", True): (
        "From now on <b>{name}</b> may go heavier than you write, where it suits them. What went out already stays as it is."
    ),
    ("heavier", False): "<b>{name}</b> goes no heavier than you write any more.",
    ("volume", True): (
        "From now on, where something is too much for <b>{name}</b>, they do fewer of what you wrote before it gets easier: at "
        "least a third."
    ),
    ("volume", False): "Where something is too much for <b>{name}</b>, an easier way comes first again.",
}


def numbered(place: int, line: VersionLine, said: AthleteCard) -> str:
    mark = " (your choice)" if place in said.ordered else ""
    return fill("{place}. {what}{mark}", place=place, what=what_words(line, said.units), mark=mark)


def order(said: AthleteCard | LineChoices, place: int, step: str) -> OrderLine:
    fields = {"session": said.session_id, "person": said.person, "place": place, "step": step}
    return OrderLine.model_validate(fields)


@wording("en", LineChoices)
def line_choices(said: LineChoices) -> Worded:
    text = fill("{name}: <b>{what}</b>", name=said.athlete, what=what_words(said.line, said.units))
    steps = (
        ("Easier", "easier"),
        ("Harder", "harder"),
        ("Something else", "other"),
        ("As written", "written"),
    )
    buttons = [Button(label, order(said, said.place, step)) for label, step in steps]
    rows: list[Row] = [tuple(buttons[:2]), tuple(buttons[2:])]
    if said.is_ordered:
        standing = MakeStanding(session=said.session_id, person=said.person, place=said.place)
        rows.append(
            (Button("Always like this", standing), Button("Your way", order(said, said.place, "free")))
        )
    return Worded(text, tuple(rows))


@wording("en", NothingFurther)
def nothing_further(_: NothingFurther) -> Worded:
    return Worded("There's nothing safe further that way with what they have.")


@wording("en", MadeStanding)
def made_standing(said: MadeStanding) -> Worded:
    return Worded(
        fill(
            "From now on, {name} does it like this whenever you write {movement}.",
            name=said.athlete,
            movement=said.movement,
        )
    )


@wording("en", CoachAsks)
def coach_asks(said: CoachAsks) -> Worded:
    about = f" for {listed([f'“{one}”' for one in said.written])}" if said.written else ""
    return Worded(
        fill(
            "{coach} asks: what could you do{about} next time, with what you have and how you feel? Just write it; "
            "I'll pass it on as it is.",
            coach=said.coach,
            about=about,
        )
    )


@wording("en", AthleteAsked)
def athlete_asked(said: AthleteAsked) -> Worded:
    return Worded(fill("I've asked {name}. What they write comes to you here.", name=said.athlete))


@wording("en", AthleteAnswers)
def athlete_answers(said: AthleteAnswers) -> Worded:
    return Worded(fill("<b>{name}</b> answers: “{text}”", name=said.athlete, text=said.text))


@wording("en", AnswerPassedOn)
def answer_passed_on(_: AnswerPassedOn) -> Worded:
    return Worded("Thank you, I've passed it on.")


@wording("en", AthleteHeld)
def athlete_held(said: AthleteHeld) -> Worded:
    words = (
        "From now on I show you {name}'s versions first, and send them when you say OK. Meanwhile {name} can see "
        "the session as posted."
        if said.held
        else "{name} gets their versions at once again."
    )
    return Worded(fill(words, name=said.athlete), ((hold_button(said),),))


@wording("en", NobodyHeld)
def nobody_held(said: NobodyHeld) -> Worded:
    who = (
        fill("I know {names}: write the name as it stands here.", names=listed(said.known))
        if said.known
        else "Nobody has joined me yet."
    )
    text = fill("I can't tell who “{name}” is, so nobody is held. ", name=said.name)
    return Worded(f"{text}{who} Whoever is missing joins me with a tap on a button of mine in the group.")


@wording("en", NothingToLookAt)
def nothing_to_look_at(said: NothingToLookAt) -> Worded:
    return Worded(
        fill("There's no session to show you for {name}, or none for them today.", name=said.athlete)
    )


@wording("en", AskWho)
def ask_who(said: AskWho) -> Worded:
    several = len({one.group for one in said.among}) > 1
    rows = tuple(
        (Button(namesake(one, several=several), MeanMember(member=one.member)),) for one in said.among
    )
    return Worded(
        fill(
            "There's more than one {name} here, and I've done nothing yet. Whom do you mean?", name=said.name
        ),
        rows,
    )


def namesake(one: Namesake, *, several: bool) -> str:
    """`Bo (2), here since 3 March`; in which group, where that tells them apart."""
    where = f"in {one.group[:25]}" if several else "here"
    return f"{one.name[:25]}, {where} since {one.since:%-d %B}"
