"""HTML of the platform: the one escape function, and templates that always use it."""

import html
import re

# Eight, eleven, eighteen and the eighties begin with a vowel.
AN = re.compile(r"[aeiou]|8|1[18](?!\d)")


def escape(text: object) -> str:
    """Everything that a person or a coach typed goes through here; `< > &` are all the platform asks for."""
    return html.escape(str(text), quote=False)


def fill(template: str, **values: object) -> str:
    """`template` (our own words, with markup) with its `{names}` filled in, escaped."""
    return template.format(**{name: escape(value) for name, value in values.items()})


def sentence(words: str) -> str:
    """Somebody's words with an end to them; plain text."""
    return words if words.endswith((".", "!", "?", "…")) else f"{words}."


def bullets(lines: list[str]) -> str:
    """HTML lines as a list."""
    return "\n".join(f"• {line}" for line in lines)


def folded(html: str) -> str:
    """What opens with a tap; its first line is what is seen of it."""
    return f"<blockquote expandable>{html}</blockquote>"


def listed(names: list[str] | tuple[str, ...]) -> str:
    """`Ilse`, `Ilse and Bo`, `Ilse, Bo and Tam`; plain text, not escaped."""
    *first, last = names or ("",)
    return f"{', '.join(first)} and {last}" if first else last


def plural(name: str) -> str:
    """`push-ups`, `floor presses`, `farmer carries`."""
    if name.endswith(("s", "x", "ch", "sh")):
        return f"{name}es"
    return f"{name.removesuffix('y')}ies" if name.endswith("ry") else f"{name}s"


# They end in s and aren't what is counted.
UNCOUNTED = {"cross", "triceps"}


def singular(label: str) -> str:
    """`deadlift with a pause below the knee`, `floor press`: one of what a label counts, which is its first plural."""
    if label.startswith("a "):
        return label
    words = label.split(" ")
    counted = [n for n, word in enumerate(words) if word.rstrip(",:").endswith("s") and word not in UNCOUNTED]
    if not counted:
        return label
    word = words[counted[0]]
    stem, end = word.rstrip(",:"), word[len(word.rstrip(",:")) :]
    words[counted[0]] = _one(stem) + end
    return " ".join(words)


def _one(plural_word: str) -> str:
    if plural_word.endswith("ies"):
        return f"{plural_word.removesuffix('ies')}y"
    return plural_word.removesuffix("es" if plural_word.endswith(("sses", "ches")) else "s")


def with_article(words: str) -> str:
    """`a table`, `an 8 kg dumbbell`; things that come in pairs have none."""
    if words.endswith("s"):
        return words
    return f"an {words}" if AN.match(words) else f"a {words}"
