"""Every command with its line in the help, so that the help needs none of their modules."""

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Listed:
    """`module` of bot/commands has the command under its own name, a dash being an underscore there.

    `file`: a small one of the kind that the command reads.
    """

    module: str
    summary: str
    examples: tuple[str, ...]
    file: str = ""


_ROSTER = """\
[[athlete]]
name = "Ilse"
sex = "female"
body_mass_kg = 62
equipment = [{ implement = "chair" }, { implement = "dumbbell", loads_kg = [8] }]
limits = ["no-running"]
tests = [{ movement = "push-up", reps = 7 }]
"""
_SCORES = """\
{"format": "amrap", "scores": [
  {"name": "Bo", "rounds": 7, "reps": 12},
  {"name": "Ilse", "rounds": 8, "reps": 0, "scaled": true}]}
"""
_CLASSES = """\
[[class]]
title = "Morning strength"
zone = "Europe/Berlin"
start = "2026-03-02T09:00"
rule = "FREQ=WEEKLY;BYDAY=MO"
[[athlete]]
name = "Cal"
zone = "America/New_York"
"""

COMMANDS = {
    "serve": Listed(
        "serve", "Run the bot until it is told to stop.", ("BELLWETHER_TOKEN=... bellwether serve",)
    ),
    "rehearse": Listed(
        "rehearse",
        "Play a day of an invented group; no account needed.",
        ("bellwether rehearse", "bellwether rehearse --once --all > day.txt", "bellwether rehearse --no-day"),
    ),
    "preview": Listed(
        "preview",
        "Show how a session lands on a group.",
        (
            "bellwether preview SESSION.txt --roster ROSTER.toml",
            "bellwether preview SESSION.txt --roster ROSTER.toml --why Ilse",
        ),
        _ROSTER,
    ),
    "read": Listed(
        "reading",
        "Read typed words the way the bot does.",
        (
            "bellwether read session SESSION.txt",
            "bellwether read score '7+12' --for SESSION.txt",
            "bellwether read message 'my left knee hurts'",
        ),
    ),
    "rank": Listed("rank", "Rank the scores of a file.", ("bellwether rank SCORES.json",), _SCORES),
    "classes": Listed(
        "classes",
        "Show when classes take place, and who is reminded.",
        ("bellwether classes CLASSES.toml --from 2026-03-02 --to 2026-03-08",),
        _CLASSES,
    ),
    "movements": Listed(
        "movements",
        "Show the movements, or one with its variants.",
        ("bellwether movements", "bellwether movements 'push-up'"),
    ),
    "implements": Listed("implements", "List the things to lift or use.", ("bellwether implements",)),
    "limits": Listed("limits", "List what an athlete can ask to be spared.", ("bellwether limits",)),
    "backup": Listed("backup", "Copy the database while the bot runs.", ("bellwether backup copy.db",)),
    "restore": Listed("restore", "Bring a copy of the database back.", ("bellwether restore copy.db",)),
    "check": Listed(
        "check", "Look a database or a copy through.", ("bellwether check", "bellwether check copy.db")
    ),
    "parked": Listed("parked", "List what was given up.", ("bellwether parked",)),
    "replay": Listed(
        "parked",
        "Try anew what was given up.",
        ("bellwether replay letter-12 update-7", "bellwether replay --all"),
    ),
    "relearn": Listed("relearn", "Work out anew what scores teach of everybody.", ("bellwether relearn",)),
    "unit": Listed(
        "unit",
        "Print a unit file for systemd.",
        ("bellwether unit > /etc/systemd/system/bellwether.service",),
    ),
}
