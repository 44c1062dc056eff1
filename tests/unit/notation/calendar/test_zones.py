"""A coach types a city."""

import tomllib
from pathlib import Path
from zoneinfo import ZoneInfo, available_timezones

import pytest
from hypothesis import given
from hypothesis import strategies as st

from core.notation.calendar import zones
from core.notation.calendar.zones import places_in, read_zone


@pytest.mark.parametrize(
    ("typed", "zone"),
    [
        ("Berlin", "Europe/Berlin"),
        ("europe/berlin", "Europe/Berlin"),
        ("new york", "America/New_York"),
        ("  Lisbon ", "Europe/Lisbon"),
        ("utc", "UTC"),
    ],
)
def test_a_city_or_a_zones_name_is_understood(typed, zone):
    assert read_zone(typed) == (zone,)


def test_a_misspelt_city_is_guessed():
    assert "Europe/Lisbon" in read_zone("Lisbonn")


def test_no_zone_is_made_up():
    assert read_zone("my kitchen") == ()


@given(st.text(max_size=80))
def test_whatever_is_typed_only_real_zones_come_back(typed):
    assert all(ZoneInfo(zone) for zone in read_zone(typed))


@pytest.mark.parametrize(
    ("typed", "zone"), [("Germany", "Europe/Berlin"), ("we're in norway", "Europe/Oslo")]
)
def test_a_country_with_one_zone_is_enough(typed, zone):
    assert zone in read_zone(typed)


def test_a_country_with_many_zones_is_asked_further():
    assert len(read_zone("USA")) > 4


@pytest.mark.parametrize(
    ("typed", "zone"),
    [
        ("Bergen", "Europe/Oslo"),
        ("we're near Tromsø", "Europe/Oslo"),
        ("Köln", "Europe/Berlin"),
        ("Lodz", "Europe/Warsaw"),
        ("Łódź", "Europe/Warsaw"),
        ("San Francisco", "America/Los_Angeles"),
        ("texas", "America/Chicago"),
        ("Bath", "Europe/London"),
    ],
)
def test_a_town_or_a_region_goes_by_the_clock_of_its_zone(typed, zone):
    assert read_zone(typed) == (zone,)


@pytest.mark.parametrize(
    ("typed", "zone"),
    [
        ("Voss, Norway", "Europe/Oslo"),
        ("Madrid, Spain", "Europe/Madrid"),
        ("Paris, Texas", "America/Chicago"),
        ("Oslo, where the sea is", "Europe/Oslo"),
    ],
)
def test_a_country_behind_a_comma_says_where_the_town_is(typed, zone):
    assert read_zone(typed) == (zone,)


def test_a_town_that_is_an_everyday_word_is_none_in_a_sentence():
    assert read_zone("nice") == ("Europe/Paris",)
    assert places_in("a nice split in the bath") == ()


def test_every_town_of_the_table_is_of_a_real_zone_and_of_one():
    tables = tomllib.loads((Path(zones.__file__).parent / "towns.toml").read_text("utf-8"))
    rows = [(zone, towns.split(", ")) for table in tables.values() for zone, towns in table.items()]
    assert {zone for zone, _ in rows} <= available_timezones()
    for zone, towns in rows:
        for town in towns:
            assert read_zone(town) == (zone,), town
