"""The findings panel: by bed, filtered, read in full, lived with, mended, by mouse and keys."""

from datetime import date

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QLabel, QPushButton

from gardencanvas.app.session import Session
from gardencanvas.fit.report import Verdict
from tests.garden.makers import bed, garden, row


def clashing():
    """Two rows of tomato a hand apart in one bed, two of cabbage in the other (distances our own)."""
    return garden(
        row("one", "tomato", 0.1, 0.1, kind="raised", on=date(2027, 6, 1)),
        row("two", "tomato", 0.1, 0.25, kind="raised", on=date(2027, 6, 1)),
        row("three", "cabbage", 0.1, 2.2, kind="raised", on=date(2027, 5, 10)),
        row("four", "cabbage", 0.1, 2.4, kind="raised", on=date(2027, 5, 10)),
        beds=(bed("bed-1"), bed("bed-2", 0.0, 2.0)),
    )


@pytest.fixture
def main(open_window):
    main = open_window(Session(clashing()))
    main.bottom.setCurrentWidget(main.findings)
    main.findings.rebuild()
    return main


def rows(main):
    return main.findings._rows()


def texts(main):
    return [r.siblingAtColumn(2).data() for r in rows(main)]


def choose(main, index=0):
    main.findings.list.setCurrentIndex(rows(main)[index])
    return main.findings.detail


def button(widget, text):
    return next(b for b in widget.findChildren(QPushButton) if b.text() == text)


def test_findings_stand_under_their_bed_worst_first(main):
    model = main.findings._model
    heads = [model.item(i).text() for i in range(model.rowCount())]
    assert {h.split(" (")[0] for h in heads} == {"bed-1", "bed-2"}
    for i in range(model.rowCount()):
        head = model.item(i)
        found = [
            main.findings._findings[head.child(j, 0).data(Qt.ItemDataRole.UserRole)]
            for j in range(head.rowCount())
        ]
        assert [f.verdict for f in found] == sorted((f.verdict for f in found), reverse=True)


def test_words_and_kinds_narrow_the_list(main):
    all_of_them = len(rows(main))
    main.findings.words.setText("cabbage")
    main.findings.rebuild()
    assert 0 < len(rows(main)) < all_of_them
    assert all("abbage" in text for text in texts(main))
    main.findings.words.setText("no such word")
    main.findings.rebuild()
    assert rows(main) == []
    assert main.findings.empty.isVisibleTo(main)


def test_a_chosen_finding_tells_why_with_its_source(main):
    detail = choose(main)
    told = [label.text() for label in detail.findChildren(QLabel)]
    assert any("Source:" in text for text in told)
    assert any(text.startswith(("clashes", "strains")) for text in told)


def test_a_click_goes_to_the_place_and_the_date(main):
    index = rows(main)[0]
    main.findings._go(index)
    finding = main.findings.detail.finding or main.findings._findings[index.data(Qt.ItemDataRole.UserRole)]
    assert main.session.on == finding.first
    assert main.session.selection == set(finding.plantings)


def test_a_finding_is_lived_with_stays_listed_last_and_its_mark_is_quiet(main, qtbot):
    before = main.session.garden
    detail = choose(main)
    finding = detail.finding
    QTest.keyClicks(detail.note, "I know, an experiment")
    QTest.keyClick(detail.note, Qt.Key.Key_Return)
    (accepted,) = main.session.layout.accepted
    assert (accepted.code, set(accepted.plantings)) == (finding.code, set(finding.plantings))
    main.findings.rebuild()
    assert any("I know, an experiment" in text for text in texts(main))
    assert finding.id in main.findings._findings
    main.session.history.undo()
    assert main.session.garden is before


def test_when_all_findings_of_a_planting_are_lived_with_its_mark_is_quiet_and_moving_it_keeps_that(main):
    for _ in range(40):
        main.findings.rebuild()
        open_ = [i for i, r in enumerate(rows(main)) if "lived with" not in r.data()]
        if not open_:
            break
        detail = choose(main, open_[0])
        button(detail, "Live with it").click()
    marks = main.view.plan.marks
    assert all(mark.quiet for mark in marks.values() if mark.verdict >= Verdict.STRAINS)
    main.findings.rebuild()
    detail = choose(main, 0)
    button(detail, "Mind it again").click()
    assert any(not mark.quiet for mark in marks.values() if mark.verdict >= Verdict.STRAINS)


def test_a_remedy_is_found_and_made_from_the_list(main, qtbot):
    index = next(i for i, text in enumerate(texts(main)) if "abbage" in text)
    detail = choose(main, index)
    qtbot.waitUntil(lambda: detail.remedies is not None and bool(detail.remedies.buttons), timeout=20_000)
    finding = detail.finding
    said = detail.remedies.buttons[0].said
    detail.remedies.buttons[0].click()
    assert main.session.history.undo_text == said
    assert all(f.id != finding.id or f.verdict < Verdict.STRAINS for f in main.session.report.findings)


def test_f8_walks_through_all_of_them(main):
    seen = []
    for _ in rows(main):
        main.actions_.all["next finding"].trigger()
        seen.append(main.findings._chosen)
    assert len(set(seen)) == len(rows(main))
