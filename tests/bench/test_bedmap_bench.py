"""How fast a bed map is printed: 12 beds, 150 plantings; goal under 3 s.

The floor beside it: a bare PDF page with as many marks as the map has plants.
Run with ``pytest tests/bench/test_bedmap_bench.py --benchmark-enable``.
"""

from datetime import date

import pytest
from PySide6.QtCore import QBuffer, QByteArray, QIODevice, QPointF
from PySide6.QtGui import QPainter, QPdfWriter

from gardencanvas.crops.catalogue import catalogue
from gardencanvas.fit import check
from gardencanvas.garden.pattern import Rows
from gardencanvas.paper.bedmap import Plan, write_bedmap
from gardencanvas.paper.document import fonts_ready
from gardencanvas.words.plain import Measure
from tests.garden.makers import bed, garden, row

CROPS = ("leek", "carrot", "lettuce", "beetroot", "radish", "spinach", "onion", "kale")


@pytest.fixture(scope="module")
def plan():
    beds = [bed(f"bed-{i}", (i % 3) * 7.0, (i // 3) * 2.0, 6.0, 1.2) for i in range(12)]
    rows = []
    for i in range(150):
        x, y = (i % 12 % 3) * 7.0, (i % 12 // 3) * 2.0
        place = i // 12
        pattern = Rows(
            origin=(x + 0.1 + (place % 4) * 1.45, y + 0.05 + (place // 4) * 0.28),
            length_m=1.3, spacing_m=0.1, row_spacing_m=0.25,
        )  # fmt: skip
        rows.append(row(f"p{i}", CROPS[i % 8], pattern=pattern, on=date(2027, 4, 1)))
    value = garden(*rows, beds=tuple(beds))
    return Plan(value, value.layouts[0], check(value), catalogue(), Measure(), date(2027, 7, 1))


def test_bed_map(benchmark, plan, tmp_path):
    fonts_ready()
    pages = benchmark.pedantic(write_bedmap, (plan, tmp_path / "m.pdf"), rounds=3, warmup_rounds=1)
    assert pages >= 13


def test_floor_bare_page(benchmark, plan):
    marks = sum(p.pattern.count for p in plan.layout.plantings)
    fonts_ready()

    def bare():
        data = QByteArray()
        buffer = QBuffer(data)
        buffer.open(QIODevice.OpenModeFlag.WriteOnly)
        writer = QPdfWriter(buffer)
        painter = QPainter(writer)
        for i in range(marks):
            painter.drawEllipse(QPointF(100 + i % 100 * 40, 100 + i // 100 * 40), 15, 15)
        painter.end()
        return len(data)

    assert benchmark.pedantic(bare, rounds=3, warmup_rounds=1) > 1000
