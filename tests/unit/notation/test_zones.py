"""A coach types a city."""

from zoneinfo import ZoneInfo

import pytest
from hypothesis import given
from hypothesis import strategies as st

from core.notation.zones import read_zone


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
