"""The catalogue: counts, sources, resolving, own crops and varieties over it."""

from collections import Counter

import pytest

from gardencanvas.crops.catalogue import CatalogueError, UnknownCrop, catalogue, load
from gardencanvas.crops.check import named_sources
from gardencanvas.crops.fallback import STAGES
from gardencanvas.crops.interactions import interactions
from gardencanvas.crops.model import Crop, Group, Variety
from gardencanvas.resources_folder import resources

CROPS = catalogue()


def own(crop_id="tomato", **changes):
    return Crop.model_validate({**CROPS.crop(crop_id).model_dump(), **changes})


def test_it_holds_what_was_promised():
    groups = Counter(c.group for c in CROPS.crops)
    assert len(CROPS.crops) >= 150
    assert groups[Group.HERB] >= 30
    assert groups[Group.FLOWER] >= 25
    assert groups[Group.SOFT_FRUIT] >= 10
    assert groups[Group.GREEN_MANURE] >= 8
    assert len(CROPS.varieties) >= 40
    assert all(CROPS.families[c.family] for c in CROPS.crops)


def test_every_number_fact_hazard_and_remark_names_a_source_that_exists():
    named = [(r.id, *s) for r in (*CROPS.crops, *CROPS.varieties) for s in named_sources(r)]
    named += [(i.id, "source", i.source) for i in interactions()]
    assert len(named) > 8000
    assert [n for n in named if n[2] not in CROPS.sources] == []


def test_every_number_of_a_completed_crop_names_a_source_that_exists():
    pairs = [(c.id, None) for c in CROPS.crops] + [(v.crop, v.id) for v in CROPS.varieties]
    bare = [(p, s) for p in pairs for s in named_sources(CROPS.resolve(*p)) if s[1] not in CROPS.sources]
    assert bare == []


def test_named_sources_misses_none():
    """As many as there are values with a source, counted another way."""
    crop = CROPS.crop("tomato")

    def count(value):
        if isinstance(value, dict):
            return ("source" in value) + sum(map(count, value.values()))
        return sum(map(count, value)) if isinstance(value, (list, tuple)) else 0

    assert len(list(named_sources(crop))) == count(crop.model_dump()) > 40


def test_resolve_gives_the_same_object():
    assert CROPS.resolve("tomato") is CROPS.resolve("tomato")
    variety = CROPS.varieties[0]
    assert CROPS.resolve(variety.crop, variety.id) is CROPS.resolve(variety.crop, variety.id)


@pytest.mark.parametrize("variety", CROPS.varieties, ids=lambda v: v.id)
def test_a_variety_overrides_only_what_differs(variety):
    """All but what it names, and the stages that follow its days, is as the crop has it."""
    plain, grown = CROPS.resolve(variety.crop), CROPS.resolve(variety.crop, variety.id)
    named = {k for k in Variety.model_fields if getattr(variety, k) is not None} & set(Crop.model_fields)
    named -= {"id", "name"}
    assert named
    for field in Crop.model_fields:
        if field in named:
            assert getattr(grown, field) == getattr(variety, field)
        elif field not in STAGES:
            assert getattr(grown, field) == getattr(plain, field), field


def test_stages_of_an_early_variety_keep_their_proportions_and_reach_its_harvest():
    plain, early = CROPS.resolve("sweetcorn"), CROPS.resolve("sweetcorn", "sweetcorn-early-short")
    before = [getattr(plain, s).mid for s in STAGES]
    after = [getattr(early, s).mid for s in STAGES]
    shares = [days / sum(before) for days in before]
    assert [days / sum(after) for days in after] == pytest.approx(shares)
    shorter = plain.harvest_from_sowing_d.mid - early.harvest_from_sowing_d.mid
    whole = plain.harvest_from_sowing_d.mid + plain.harvest_length_d.mid
    assert sum(before) - sum(after) == pytest.approx(shorter * sum(before) / whole)


@pytest.mark.parametrize("asked", [("no-such-crop", None), ("tomato", "no-such-variety")])
def test_unknown_crops_are_named(asked):
    with pytest.raises(UnknownCrop, match=asked[1] or asked[0]):
        CROPS.resolve(*asked)


def test_a_variety_of_another_crop_is_unknown():
    variety = next(v for v in CROPS.varieties if v.crop != "tomato")
    with pytest.raises(UnknownCrop):
        CROPS.resolve("tomato", variety.id)


def test_nothing_of_ones_own_is_the_same_catalogue():
    assert CROPS.with_own((), ()) is CROPS


def test_own_crops_win_and_leave_the_rest_the_same_objects():
    mine = own("tomato", name="Grandmother's tomato")
    added = own("leek", id="my-leek")
    both = CROPS.with_own(iter([mine, added]), ())
    assert both.resolve("tomato").name == "Grandmother's tomato"
    assert both.crop("my-leek") is added
    assert len(both.crops) == len(CROPS.crops) + 1
    assert both.resolve("leek") is CROPS.resolve("leek")
    assert both.sources is CROPS.sources


def test_own_varieties_win_and_may_come_from_an_iterator():
    shipped = next(v for v in CROPS.varieties if v.crop == "leek")
    taller = Variety.model_validate({**shipped.model_dump(), "name": "mine", "note": "taller"})
    both = CROPS.with_own((), iter([taller]))
    assert both.variety("leek", shipped.id) is taller
    assert len(both.varieties) == len(CROPS.varieties)
    assert both.varieties_of("leek").count(taller) == 1
    other = next(v for v in CROPS.varieties if v.crop == "carrot")
    assert both.resolve("carrot", other.id) is CROPS.resolve("carrot", other.id)


def test_a_variety_of_an_own_crop_grows_as_that_crop():
    variety = next(v for v in CROPS.varieties if v.crop == "kale" and v.spread_m is not None)
    mine = own("kale", root_depth_m={"low": 0.9, "mid": 0.9, "high": 0.9, "source": "user"})
    both = CROPS.with_own([mine], ())
    assert both.resolve("kale", variety.id).root_depth_m.mid == 0.9
    assert CROPS.resolve("kale", variety.id).root_depth_m.mid != 0.9


def faulty(tmp_path, crop_text):
    (tmp_path / "crops").mkdir()
    text = '[family]\nname = "Oxalidaceae"\ncommon = "wood sorrels"\n' + crop_text
    (tmp_path / "crops" / "oxalidaceae.toml").write_text(text, encoding="utf-8")
    (tmp_path / "sources.toml").write_bytes((resources() / "sources.toml").read_bytes())
    with pytest.raises(CatalogueError) as caught:
        load(tmp_path, tmp_path / "cache")
    return caught.value


CROP = """
[[crop]]
id = "oca"
name = "Oca"
botanical = "Oxalis tuberosa"
group = "root and tuber"
habit = "bush"
layer = "low"
starts = ["set"]
harvest = "single"
"""


@pytest.mark.parametrize(
    ("line", "field", "says"),
    [
        ('height_m = { low = 3, mid = 2, high = 4, source = "user" }', "height_m", "out of order"),
        ('height_m = { low = -1, mid = 2, high = 4, source = "user" }', "height_m", "outside 0.01 to 15 m"),
        ('spread_m = { low = 30, mid = 40, high = 50, source = "user" }', "spread_m", "right unit"),
        ('light_good = { low = 50, mid = 60, high = 70, source = "user" }', "light_good", "not per cent"),
        ("height_m = { low = 1, mid = 2, high = 4 }", "height_m.source", "missing"),
        ('height_m = { low = nan, mid = nan, high = nan, source = "user" }', "height_m.low", "finite"),
        ("heigth_m = 3", "heigth_m", "not known"),
        ('hazards = [{ part = "leaf" }]', "hazards[1].hazard", "missing"),
    ],
)
def test_a_fault_names_file_crop_field_and_why(tmp_path, line, field, says):
    error = faulty(tmp_path, CROP + line + "\n")
    complaint = error.complaints[0]
    assert (complaint.file, complaint.crop, complaint.field) == ("oxalidaceae.toml", "oca", field)
    assert says in complaint.text
    assert str(error).startswith(f"oxalidaceae.toml: oca, {field}: ")


def test_a_missing_field_and_one_crop_twice_are_named(tmp_path):
    error = faulty(tmp_path, CROP.replace('layer = "low"\n', "") + CROP + CROP)
    found = {(c.crop, c.field, c.code) for c in error.complaints}
    assert ("oca", "layer", "missing") in found
    assert ("oca", "id", "twice") in found
