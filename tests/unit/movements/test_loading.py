import shutil

import pytest

from core.movements.loading import BrokenCatalogue, read_movements
from core.movements.lookup import FOLDER, read_catalogue


@pytest.fixture
def folder(tmp_path):
    """A copy of the catalogue that a test may break."""
    return shutil.copytree(FOLDER, tmp_path / "catalogue")


def spoil(folder, file, old, new):
    path = folder / file
    text = path.read_text(encoding="utf-8")
    assert old in text
    path.write_text(text.replace(old, new, 1), encoding="utf-8")


def problems_of(folder):
    with pytest.raises(BrokenCatalogue) as broken:
        read_catalogue(folder)
    return broken.value.problems


def test_the_catalogue_that_comes_along_loads(folder):
    assert len(read_catalogue(folder).movements) >= 8


def test_an_unknown_key_is_refused_and_its_place_named(folder):
    spoil(folder, "squat.toml", 'label = "squats"', 'label = "squats"\ncolour = "red"')
    assert problems_of(folder) == (
        "squat.toml: air squat: variants.floor.colour: Extra inputs are not permitted",
    )


def test_a_missing_source_is_refused_and_its_place_named(folder):
    spoil(folder, "trunk.toml", 'seconds = { value = 2.0, source = "estimate" }', "seconds = { value = 2.0 }")
    assert problems_of(folder) == ("trunk.toml: sit-up: variants.floor.seconds.source: Field required",)


def test_all_problems_of_all_files_are_told_at_once(folder):
    spoil(folder, "squat.toml", "reserves = { squat = 1.0 }", "reserves = { squat = 7.0 }")
    spoil(
        folder,
        "hinge.toml",
        'demands = ["grip", "spinal-load", "forward-bend", "standing"]',
        'demands = ["grip", "luck"]',
    )
    spoil(folder, "travel.toml", 'unit = "m"', 'unit = "miles"')
    told = problems_of(folder)
    assert [problem.split(":")[0] for problem in told] == ["hinge.toml", "squat.toml", "travel.toml"]
    assert [problem.split(":")[1].strip() for problem in told] == ["deadlift", "air squat", "run"]


def test_a_number_written_as_text_is_refused(folder):
    spoil(folder, "travel.toml", "value = 0.373", 'value = "0.373"')
    assert "travel.toml: run: variants.outdoors.seconds.value" in problems_of(folder)[0]


def test_a_file_that_is_no_toml_is_named(folder):
    (folder / "carry.toml").write_text("pattern = ", encoding="utf-8")
    assert problems_of(folder)[0].startswith("carry.toml: ")


def test_a_file_holds_the_pattern_it_is_named_after(folder):
    (folder / "squat.toml").rename(folder / "carry.toml")
    assert "carry.toml: the name must begin with the pattern, squat" in problems_of(folder)


def test_a_pattern_may_be_parted_into_several_files(folder):
    (folder / "squat.toml").rename(folder / "squat-on-both-legs.toml")
    files = {one.file for one in read_movements(folder) if one.pattern == "squat"}
    assert "squat-on-both-legs.toml" in files


def test_a_stray_table_beside_the_movements_is_refused(folder):
    spoil(folder, "lunge.toml", 'pattern = "lunge"', 'pattern = "lunge"\n[extra]\nkey = 1')
    assert problems_of(folder)[0] == "lunge.toml: unknown key extra"


def test_a_lint_error_names_file_and_variant(folder):
    spoil(folder, "lunge.toml", 'instead = ["goblet squat/front"', 'instead = ["goblet squat/left"')
    assert (
        "lunge.toml: lunge/one-weight: leads to goblet squat/left, which is no other variant (known-ways)"
        in problems_of(folder)
    )


def test_an_empty_folder_is_an_empty_catalogue(tmp_path):
    assert read_movements(tmp_path) == ()


def test_of_a_list_among_the_needs_any_one_thing_will_do(folder):
    spoil(folder, "jump.toml", 'needs = ["box"]', 'needs = [["box", "bench"], "band"]')
    way = read_catalogue(folder).movement("box jump").variants[0]
    assert way.needs == (("box", "bench"), ("band",))
    assert way.model_dump(mode="json")["needs"] == [["box", "bench"], "band"]


def test_a_choice_of_one_thing_is_refused(folder):
    spoil(folder, "jump.toml", 'needs = ["box"]', 'needs = [["box"]]')
    (problem,) = problems_of(folder)
    assert problem.startswith("jump.toml: box jump: variants.box.needs.0: ")
    assert problem.endswith("a choice has two things or more; one is written by itself")
