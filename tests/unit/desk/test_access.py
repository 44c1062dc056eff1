"""Every command stands in the one table of who may do what, and nothing gets round it."""

import ast
import inspect
from pathlib import Path
from typing import get_args

import pytest

from bot.telegram.buttons import CODES
from bot.telegram.use_cases import COMMANDS, USE_CASES
from core.desk import commands
from core.desk.access import ACCESS, MARK, Id, Who
from core.desk.classes import commands as class_commands
from core.desk.coaching import commands as coach_commands
from core.desk.commands import Command
from core.desk.profile import commands as own_commands
from core.desk.versions import commands as version_commands
from core.store.belongings import Thing

MODULES = (class_commands, coach_commands, commands, own_commands, version_commands)
EVERY = {
    kind
    for module in MODULES
    for _, kind in inspect.getmembers(module, inspect.isclass)
    if issubclass(kind, Command) and kind is not Command
}
# Numbers that name nothing stored.
PLAIN = {
    *(
        "revision",
        "minute",
        "minutes",
        "place",
        "effort",
        "nth",
        "pair",
        "reps",
        "lighter",
        "monday",
        "until",
        "asked",
        "line",
        "earlier",
    ),
    *("each", "start", "end", "slot", "to"),
}
# What only the platform itself tells, or what its own replies and messages are called there.
TOLD = {"reply_to", "message_id", "old", "new"}
# Looked up in the open question, which names whom it asked about.
IN_THE_QUESTION = {(commands.MeanMember, "member")}
DESK = Path(commands.__file__).parent
# These read rows by ids that were found through the visitor, or that nobody but the desk wrote.
OWN_IDS = {"rank_anew", "erase_me", "group_of", "group", "replaced_by", "card_of", "claim_of", "correct"}


def by_name(kinds):
    """Parameters that are called as their commands are."""
    return [pytest.param(kind, id=kind.__name__) for kind in sorted(kinds, key=str)]


def numbers_of(kind):
    """The fields that hold whole numbers."""
    fields = kind.model_fields.items()
    return {name for name, one in fields if int in {one.annotation, *get_args(one.annotation)}}


@pytest.mark.parametrize("kind", by_name(EVERY))
def test_every_command_is_in_the_table(kind):
    assert kind in ACCESS


@pytest.mark.parametrize("kind", by_name(ACCESS))
def test_every_id_in_a_command_has_to_belong_to_somebody(kind):
    named = set(ACCESS[kind].ids) | {name for other, name in IN_THE_QUESTION if other is kind}
    assert numbers_of(kind) - PLAIN - TOLD == named


@pytest.mark.parametrize("kind", by_name(USE_CASES))
def test_every_use_case_looks_into_the_table(kind):
    assert MARK in vars(USE_CASES[kind])


def test_no_button_and_no_typed_command_does_what_only_the_platform_tells():
    pressed = set(CODES.values()) | {type(make()) for make, _ in COMMANDS.values()}
    assert pressed <= set(ACCESS)
    assert not [kind for kind in pressed if ACCESS[kind].who is Who.PLATFORM]


def test_what_is_about_an_athlete_is_for_coaches_and_names_their_group():
    for kind, rule in ACCESS.items():
        if Id.ATHLETE in rule.ids.values():
            assert rule.who is Who.COACH, kind
            assert len(rule.ids) > 1, kind


def test_health_and_others_never_show_in_a_group():
    shown = {kind.__name__ for kind, rule in ACCESS.items() if rule.in_group and rule.who is not Who.PLATFORM}
    assert shown == {
        *(
            "TalkInGroup",
            "SeeBoard",
            "ConfirmScore",
            "PickScore",
            "LeaveScore",
            "FixScore",
            "TakeScoreBack",
            "ClaimAsWritten",
        ),
        *("ComeTo", "StayAway"),
    }


def test_every_kind_of_thing_can_be_looked_up():
    assert {one.thing for one in Id} - {None} == set(Thing)


def test_rows_are_fetched_through_the_visitor():
    """`find` takes the groups or the person; `get` takes any id, so nothing that comes from outside may reach it."""
    found = [
        f"{path.name}: {function.name}"
        for path in DESK.rglob("*.py")
        for function in ast.walk(ast.parse(path.read_text()))
        if isinstance(function, ast.AsyncFunctionDef) and function.name not in OWN_IDS
        if {"visit", "self"} & {argument.arg for argument in function.args.args}
        if any(is_unscoped(call) for call in ast.walk(function))
    ]
    assert found == []


UNSCOPED = {"sessions", "versions", "scores", "classes", "faults", "words", "orders", "groups", "people"}


def is_unscoped(node):
    """`uow.sessions.get(...)`."""
    if not (isinstance(node, ast.Call) and isinstance(node.func, ast.Attribute) and node.func.attr == "get"):
        return False
    owner = node.func.value
    return isinstance(owner, ast.Attribute) and owner.attr in UNSCOPED
