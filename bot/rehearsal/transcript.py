"""The record of a rehearsal as plain lines, readable like a chat."""

from bot.rehearsal.seen import Happening

INDENT = " " * 8


def lines_of(happening: Happening) -> list[str]:
    """Nothing for what no reader misses: empty answers to presses, and messages that only lost their buttons."""
    at = f"{happening.at:%H:%M}"
    if happening.kind == "press":
        return [f"{at}   {happening.who} taps [{happening.detail}]"]
    if happening.kind == "toast":
        return [f"{at}   ({happening.detail})"] if happening.detail else []
    if happening.kind == "message":
        return _message(at, happening, happening.who)
    if happening.kind == "edit" and "→" not in happening.text:
        return _message(at, happening, f"{happening.who} (edits)")
    return []


def _message(at: str, happening: Happening, who: str) -> list[str]:
    first, *rest = happening.text.split("\n")
    lines = ["", f"{at}   {who}, in {happening.chat}:", f"{INDENT}{first}"]
    lines += [f"{INDENT}{line}".rstrip() for line in rest]
    if happening.message.buttons and happening.from_bot:
        lines += [
            f"{INDENT}{' '.join(f'[{button.label}]' for button in row)}" for row in happening.message.buttons
        ]
    return lines
