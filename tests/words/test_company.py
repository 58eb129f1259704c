"""What is known of a crop beside others names direction and size as the table gives them."""

from gardencanvas.crops.catalogue import catalogue
from gardencanvas.crops.interactions import interactions
from gardencanvas.words.company import company
from gardencanvas.words.plain import THIN

KNOWN = catalogue()


def said_of(crop_id):
    return {(c.others, c.said, c.evidence) for c in company(KNOWN.crop(crop_id), KNOWN, interactions())}


def test_direction():
    """Uvah & Coaker 1984: onions keep carrot fly from carrots, carrots keep thrips from onions."""
    assert ("Onion, Spring onion", "fewer pests for it: carrot fly", "one trial") in said_of("carrot")
    assert ("Carrot", "fewer pests for them: carrot fly", "one trial") in said_of("onion")
    assert ("Onion", "fewer pests for them: onion thrips", "one trial") in said_of("carrot")


def test_size():
    """Baumann and others 2000: leek with celery, weed cover 41 % less, land equivalent ratio 1.10."""
    told = {said for _, said, _ in said_of("leek")}
    assert "yield of both on the same ground 1.10 times that of each alone" in told
    assert any(said.endswith(f"−41{THIN}%") for said in told)


def test_tradition_comes_last_and_says_so():
    evidence = [c.evidence for c in company(KNOWN.crop("tomato"), KNOWN, interactions())]
    assert evidence[-1] == "tradition only"
    assert evidence == sorted(
        evidence, key=("several trials", "one trial", "common practice", "tradition only").index
    )


def test_every_source_is_known_and_no_crop_keeps_company_with_itself_by_name():
    for crop in KNOWN.crops:
        for each in company(crop, KNOWN, interactions()):
            assert each.source in KNOWN.sources
            assert crop.name not in each.others.split(", ")
