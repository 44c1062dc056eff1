"""Words about what athletes want their coach to read."""

from bot.words.text import bullets, fill
from bot.words.wording import Button, Row, Worded, wording
from core.desk.profile.commands import ForgetWord, PassOn, PassOnTo
from core.desk.talk.says import (
    AthleteSays,
    AthleteStopped,
    MyWords,
    OfferWord,
    WordForgotten,
    WordPassed,
    WordShown,
)


@wording("en", OfferWord)
def offer_word(said: OfferWord) -> Worded:
    head = "I didn't get “{text}” myself. Shall I pass it on" if said.unread else "Shall I pass on “{text}”"
    whom = (
        "to your coach in your words" if not said.groups else "in your words, and to the coach of which group"
    )
    text = fill(f"{head} {whom}? Only they would read it, never the group.", text=said.text)
    no = Button("No, forget it", ForgetWord(word=said.word))
    if not said.groups:
        return Worded(text, ((Button("Yes, pass it on", PassOn(word=said.word)), no),))
    rows = [(Button(title[:50], PassOnTo(word=said.word, group=group)),) for group, title in said.groups]
    return Worded(text, (*rows, (no,)))


@wording("en", WordPassed)
def word_passed(said: WordPassed) -> Worded:
    head = "I didn't get “{text}” myself, so your" if said.unread else "Your"
    text = fill(
        f"{head} coach in {{group}} reads it, in your words. Write <i>my notes</i> to see what you've told them.",
        text=said.text,
        group=said.group,
    )
    return Worded(text, ((Button("Take it back", ForgetWord(word=said.word)),),))


@wording("en", WordForgotten)
def word_forgotten(_: WordForgotten) -> Worded:
    return Worded("It's gone: I don't keep it, and your coach doesn't see it here any more.")


@wording("en", MyWords)
def my_words(said: MyWords) -> Worded:
    if not said.words:
        return Worded("You've told me nothing for your coach. Write <i>tell my coach</i> and what it is.")
    lines = [own(one) for one in said.words]
    rows: tuple[Row, ...] = tuple(
        (Button(f"Delete {place}", ForgetWord(word=one.id)),) for place, one in enumerate(said.words, 1)
    )
    return Worded(
        "What you've told me for your coach:\n" + "\n".join(f"{n}. {one}" for n, one in enumerate(lines, 1)),
        rows,
    )


def own(one: WordShown) -> str:
    """`3 March: “...”`; HTML."""
    mark = "" if one.passed else " (your coach doesn't see it)"
    return fill("{day}: “{text}”{mark}", day=f"{one.on:%-d %B}", text=one.text, mark=mark)


@wording("en", AthleteStopped)
def athlete_stopped(said: AthleteStopped) -> Worded:
    text = fill("<b>{name}</b> stopped: no session from me until they are cleared.", name=said.athlete)
    if said.words is None:
        why = "What it was stays with them; I've told them to get help if it doesn't pass. Please look after them."
        return Worded(f"{text} {why}")
    return Worded(fill("{text}\nIn their words: “{words}”", text=text, words=said.words))


@wording("en", AthleteSays)
def athlete_says(said: AthleteSays) -> Worded:
    return Worded(fill("<b>{name}</b> has this for you: “{text}”", name=said.athlete, text=said.text))


def in_their_words(words: tuple[WordShown, ...]) -> str:
    """What the coach sees of one athlete; HTML."""
    return "In their words:\n" + bullets(
        [fill("{day}: “{text}”", day=f"{one.on:%-d %B}", text=one.text) for one in words]
    )
