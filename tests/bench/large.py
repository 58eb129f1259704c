"""A large garden of many rows, for benches."""

from datetime import date

from gardencanvas.garden.garden import Garden, Layout
from gardencanvas.garden.ground import Bed
from gardencanvas.garden.pattern import Rows
from gardencanvas.garden.planting import Planting, Start
from tests.garden.makers import site

IN_A_ROW = 100
CROPS = (
    "leek", "carrot", "beetroot", "cabbage", "lettuce", "onion", "spinach", "kale", "tomato", "celeriac",
    "basil", "pea", "dwarf-bean", "parsnip", "chard", "radish",
)  # fmt: skip


def large_garden(plants: int) -> Garden:
    """Beds of four rows, a hundred plants to the row, sixteen crops."""
    beds, plantings = [], []
    for number in range(plants // IN_A_ROW):
        place, row = divmod(number, 4)
        x, y = place % 5 * 16.0, place // 5 * 1.7
        if row == 0:
            outline = ((x, y), (x + 15.2, y), (x + 15.2, y + 1.2), (x, y + 1.2))
            beds.append(Bed(id=f"bed-{place}", name=f"Bed {place}", outline=outline))
        pattern = Rows(origin=(x + 0.1, y + 0.3 * row), length_m=15.0, spacing_m=0.15, row_spacing_m=0.3)
        start = Start(kind="sown", on=date(2027, 4, 20))
        plantings.append(Planting(id=f"p-{number}", crop=CROPS[number % 16], pattern=pattern, start=start))
    layout = Layout(id="l1", name="Large", year=2027, beds=tuple(beds), plantings=tuple(plantings))
    return Garden(name="Large", site=site(), layouts=(layout,))
