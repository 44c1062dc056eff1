"""Whom a coach means by a name: nobody is guessed."""

from datetime import UTC, datetime

import pytest

from core.desk.coached import WhoIsMeant, roster_of
from core.notation.people import find_name, name_in_front
from core.store.groups import told_apart
from core.store.records import Membership, Person, Role

NOW = datetime(2026, 3, 2, 6, tzinfo=UTC)


def member(number, name, group=1):
    person = Person(id=number, user_id=number, name=name, language="en", created_at=NOW)
    return Membership(
        id=number,
        person=person,
        own_name=name,
        group_id=group,
        role=Role.ATHLETE,
        shares_limits=False,
        held=False,
        goes_heavier=False,
        volume_first=False,
        lead_minutes=60,
        joined_at=NOW,
        left_at=None,
    )


def roster(*names, meant=None):
    members = told_apart([member(number, name) for number, name in enumerate(names, 1)])
    return roster_of(members, meant or {})


def test_a_name_that_one_has_is_theirs():
    assert roster("Ilse", "Bo")["Bo"].id == 2


def test_a_name_that_two_have_is_asked_about():
    found = roster("Bo", "Ilse", "Bo")
    with pytest.raises(WhoIsMeant) as asked:
        found["Bo"]
    assert [one.person.name for one in asked.value.members] == ["Bo", "Bo (2)"]
    assert found["Bo (2)"].id == 3


def test_whoever_was_said_to_be_meant_is():
    assert roster("Bo", "Bo", meant={"bo": 2})["Bo"].id == 2
    assert roster("Bo", "Bo", meant={"bo": 1})["Bo"].id == 1


def test_a_first_name_that_two_have_is_asked_about():
    found = roster("Bo Larsen", "Bo Madsen", "Ilse Kok")
    with pytest.raises(WhoIsMeant):
        found["Bo"]
    assert found["Bo Madsen"].id == 2


def test_one_person_in_two_groups_is_asked_about_too():
    twice = roster_of([member(1, "Ilse", group=1), member(2, "Ilse", group=2)], {})
    with pytest.raises(WhoIsMeant):
        twice["Ilse"]


@pytest.mark.parametrize(("text", "name"), [("Bo 9+9", "Bo"), ("Bo (2) 9+9", "Bo (2)"), ("Ilse 9+9", "Ilse")])
def test_the_names_can_be_read_in_front_of_a_score(text, name):
    found = name_in_front(text, tuple(roster("Bo", "Ilse", "Bo")))
    assert (found.name, found.rest) == (name, "9+9")


def test_the_names_can_be_read_anywhere():
    names = tuple(roster("Bo Larsen", "Bo Madsen"))
    assert find_name("hold bo, please", names).name == "Bo"
    assert find_name("hold bo madsen", names).name == "Bo Madsen"


def test_everybody_is_there_once():
    assert [one.id for one in roster("Bo Larsen", "Bo Madsen", "Bo Larsen").everybody] == [1, 2, 3]
