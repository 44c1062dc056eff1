"""Words for changing a line of a version, and for pain."""

from datetime import date

from bot.words.reasons import PLACES
from bot.words.text import escape, fill
from bot.words.things import label_of_thing
from bot.words.versions import joint, sided, what_words
from bot.words.wording import Button, Row, Worded, in_rows, wording
from core.athletes.values import Equipment, Severity, Side
from core.desk.commands import MyVersion
from core.desk.reference import limit
from core.desk.versions.commands import (
    BeSore,
    DoAsWritten,
    EaseLine,
    FreeLine,
    HardenLine,
    LackThing,
    LineHurts,
    OpenLine,
    ReviewLimit,
    ShowLine,
    TellSide,
    TodayDiffers,
)
from core.desk.versions.says import (
    AsHardAsItGets,
    AskHowBad,
    AskLack,
    AskReview,
    AskSide,
    AskWhatHurts,
    AskWhy,
    ChooseLine,
    LineMenu,
    LineSaid,
    NotAsWritten,
    NothingEasier,
    PainNoted,
    ReviewKept,
    SideNoted,
    StopWhatHurts,
)
from core.measures import MassUnit, in_words
from core.scaling.values import Because, Change

# The platform cuts a longer label by itself, in the middle of a word.
LABEL = 40
SIDES: tuple[Side, ...] = ("left", "right", "both")
SET_NAMES = {"home": "at home", "gym": "in the gym", "trip": "away from home"}
SEE_SOMEBODY = "Please have it looked at by a doctor or physiotherapist before you load it again."


@wording("en", ChooseLine)
def choose_line(said: ChooseLine) -> Worded:
    rows = [
        (Button(label(what_words(line, said.units)), OpenLine(version=said.version_id, place=place)),)
        for place, line in enumerate(said.lines, 1)
    ]
    rows.append((Button("All of it: today is different", TodayDiffers(version=said.version_id)),))
    if said.of is None:
        return Worded("Which line would you like to change?", tuple(rows))
    day, title = said.of
    name = fill(" “{title}”", title=title) if title else ""
    text = f"This is the session{name} of {day:%A %-d %B}. A newer one is there: <i>my session today</i> shows it."
    rows.append((Button("My session of today", MyVersion()),))
    return Worded(f"{text}\n\nOf that older one, which line would you like to change?", tuple(rows))


@wording("en", StopWhatHurts)
def stop_what_hurts(_: StopWhatHurts) -> Worded:
    return Worded("Stop what hurts. Tell me which line it was, then tap “It hurts” or what comes closest.")


def label(text: str) -> str:
    return text if len(text) <= LABEL else f"{text[: LABEL - 1].rstrip()}…"


def heading(said: LineSaid) -> str:
    return fill("<b>{line}</b>", line=what_words(said.line, said.units))


@wording("en", LineMenu)
def line_menu(said: LineMenu) -> Worded:
    at = {"version": said.version_id, "place": said.place}
    rows: list[Row] = []
    if said.line.change is not Change.REST:
        rows.append((Button("Easier", EaseLine(**at)), Button("Harder", HardenLine(**at))))
        rows.append((Button("It hurts", LineHurts(**at)), Button("Show me how", ShowLine(**at))))
    if said.thing:
        rows.append((Button("I don't have that", LackThing(**at)),))
    if said.line.change is not Change.NONE:
        rows.append((Button("As written", DoAsWritten(**at)),))
    if said.changed:
        rows.append((Button("Undo my change", FreeLine(**at)),))
    return Worded(f"{heading(said)}\nWhat would you like?", tuple(rows))


@wording("en", AskWhy)
def ask_why(said: AskWhy) -> Worded:
    at = {"version": said.version_id, "place": said.place}
    if said.step == "harder":
        row = (
            Button("Too easy", HardenLine(**at, cause="too-easy")),
            Button("A bit boring", HardenLine(**at, cause="bored")),
        )
        return Worded(f"{heading(said)}\nHarder it shall be. Why?", (row,))
    rows = (
        (
            Button("Too hard", EaseLine(**at, cause="too-hard")),
            Button("Sore today", EaseLine(**at, cause="sore")),
        ),
        (Button("No time", EaseLine(**at, cause="time")), Button("It hurts", EaseLine(**at, cause="hurts"))),
        (Button("I'd just like it easier", EaseLine(**at, cause="so")),),
    )
    return Worded(f"{heading(said)}\nEasier it shall be. Why?", rows)


@wording("en", AskLack)
def ask_lack(said: AskLack) -> Worded:
    at = {"version": said.version_id, "place": said.place}
    row = (
        Button("Just today", LackThing(**at, how="today")),
        Button("It's gone", LackThing(**at, how="gone")),
    )
    what = the_thing(said.thing, said.units)
    where = SET_NAMES[said.where]
    return Worded(
        fill("Is the {what} missing just today, or not there any more {where}?", what=what, where=where),
        (row,),
    )


def the_thing(thing: Equipment, units: MassUnit) -> str:
    name = label_of_thing(thing)
    return f"{in_words(thing.loads_kg[0], units)} {name}" if thing.loads_kg else name


@wording("en", AskWhatHurts)
def ask_what_hurts(said: AskWhatHurts) -> Worded:
    at = {"version": said.version_id, "place": said.place}
    joints = [Button(joint(one).capitalize(), LineHurts(**at, limit=one)) for one in said.limits]
    rows = in_rows(joints, 2)
    rows.append((Button("Only sore muscles", BeSore(version=said.version_id)),))
    return Worded(
        "Stop that movement for now, please. What hurts?\n"
        "Chest pain or pressure, faintness or trouble breathing: stop, sit down and call your local emergency "
        "number. Nobody watches this chat.",
        tuple(rows),
    )


@wording("en", AskSide)
def ask_side(said: AskSide) -> Worded:
    at = {"version": said.version_id, "place": said.place, "limit": said.limit}
    row = tuple(Button(side.capitalize(), LineHurts(**at, side=side)) for side in SIDES)
    return Worded(fill("Your {joint}: which side?", joint=joint(said.limit)), (row,))


@wording("en", AskHowBad)
def ask_how_bad(said: AskHowBad) -> Worded:
    at = {"version": said.version_id, "place": said.place, "limit": said.limit, "side": said.side}
    rows = (
        (Button("A little, and gone when I stop", LineHurts(**at, severity=Severity.LITTLE)),),
        (Button("Clearly, I move differently", LineHurts(**at, severity=Severity.CLEAR)),),
        (Button("Badly, or at rest too", LineHurts(**at, severity=Severity.BAD)),),
    )
    return Worded(fill("How bad is your {where}?", where=sided(said.limit, said.side)), rows)


@wording("en", PainNoted)
def pain_noted(said: PainNoted) -> Worded:
    first = "Until you tell me your {where} is fine, I leave out what loads it."
    if not said.comforted:
        first = "I'm sorry about your {where}. Until you tell me it's fine, I leave out what loads it."
    text = fill(
        first + " On {day} I'll ask how it is.",
        where=sided(said.limit, said.side),
        day=on(said.review_on),
    )
    more = (
        SEE_SOMEBODY
        if said.severity is Severity.BAD
        else "If it gets worse or doesn't go, have it looked at."
    )
    if not said.asks_side:
        return Worded(f"{text} {more}")
    return Worded(f"{text} {more} Which side is it?", (sides_of(said.limit),))


def sides_of(limit_id: str) -> Row:
    return tuple(Button(side.capitalize(), TellSide(limit=limit_id, side=side)) for side in SIDES)


@wording("en", SideNoted)
def side_noted(said: SideNoted) -> Worded:
    stays = " Your version stays as it is." if said.unchanged else ""
    return Worded(fill("Noted: your {where}.", where=sided(said.limit, said.side)) + stays)


@wording("en", AskReview)
def ask_review(said: AskReview) -> Worded:
    told = said.complaint
    asked = told.review_on.toordinal()

    def button(words: str, how: str) -> Button:
        return Button(words, ReviewLimit(group=said.group, limit=told.limit, asked=asked, how=how))

    rows = (
        (button("It's gone", "gone"), button("Better", "better")),
        (button("The same", "same"), button("Worse", "worse")),
    )
    since = on(told.since)
    where = sided(told.limit, told.side)
    return Worded(
        fill("How is your {where}? You told me about it on {since}.", where=where, since=since), rows
    )


@wording("en", ReviewKept)
def review_kept(said: ReviewKept) -> Worded:
    where = sided(said.limit, said.side)
    if said.review_on is None:
        return Worded(
            fill(
                "Good to hear! Your {where} may work again. Start lighter than before, and build up over a week.",
                where=where,
            )
        )
    texts = {
        "better": "That's the right direction. I go on sparing your {where}, and ask again on {day}.",
        "same": "Then I go on sparing your {where}, and ask again on {day}. After more than a week, have it looked at.",
        "worse": "I'm sorry. I go on sparing your {where}, and ask again on {day}. " + SEE_SOMEBODY,
    }
    return Worded(fill(texts[said.how], where=where, day=on(said.review_on)))


@wording("en", NothingEasier)
def nothing_easier(said: NothingEasier) -> Worded:
    return Worded(
        f"{heading(said)}\nThat's the easiest I know with what you have. Do as many as stay clean, rest when you "
        "like, or leave it out: that's fine. I've noted how you found it."
    )


@wording("en", AsHardAsItGets)
def as_hard_as_it_gets(said: AsHardAsItGets) -> Worded:
    return Worded(
        f"{heading(said)}\nThat's as hard as I may make it: heavier is for your coach to say. Slow it down, make "
        "every repetition perfect, rest a little less. I've noted how you found it."
    )


@wording("en", NotAsWritten)
def not_as_written(said: NotAsWritten) -> Worded:
    return Worded(f"{heading(said)}\n{escape(barred(said))}")


def barred(said: NotAsWritten) -> str:
    """Why not as written; plain text."""
    match said.because:
        case Because.LIMIT:
            return f"As written it doesn't go with “{limit(said.about or '').label}”, so I keep you off it."
        case Because.SPACE:
            return f"As written it doesn't go: {PLACES.get(said.about or '', 'the place does not allow it')}."
        case _:
            return BARRED.get(said.because, TOO_MUCH)


BARRED = {
    Because.NOT_OWNED: "As written it needs something you told me you don't have. Got it since? Just tell me.",
    Because.NOT_ASKED: "As written it needs a thing, and I don't know yet what you have. Tell me, and it goes in.",
    Because.NOTED: "Your coach noted something about how you do this, so I keep to that. They say when it's time for more.",
    Because.SKILL: "That's one to learn with your coach first. This is the step before it.",
}
TOO_MUCH = "As written would be too much for now, by what I know of you. Your coach may see it differently."


def on(day: date) -> str:
    return f"{day:%A, %-d %B}"
