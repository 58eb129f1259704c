"""Puts a bed map together: overview, the pages of each bed, or the whole garden over sheets."""

from collections.abc import Iterator
from pathlib import Path

from gardencanvas.garden.errors import Refusal
from gardencanvas.garden.ground import Bed
from gardencanvas.paper.bedmap.bed_page import Draw, bed_pages
from gardencanvas.paper.bedmap.furniture import foot
from gardencanvas.paper.bedmap.overview import overview_pages
from gardencanvas.paper.bedmap.plan import Options, Plan
from gardencanvas.paper.bedmap.sheets import sheets_of
from gardencanvas.paper.document import Document, Page, Paper, Setup, Told, fonts_ready, write_pdf
from gardencanvas.paper.sheet import Box, Sheet
from gardencanvas.words.language import say
from gardencanvas.words.plain import day_year


def bed_map(plan: Plan, setup: Setup | None = None, options: Options | None = None) -> Document:
    """The bed map of a layout as a document.

    Raises
    ------
    Refusal
        If the layout has no bed, or none of the beds wanted.
    """
    fonts_ready()
    setup, options = setup or Setup(), options or Options()
    beds = [b for b in plan.layout.beds if options.beds is None or b.id in options.beds]
    if not plan.layout.beds:
        raise Refusal(say("There is no bed in this layout yet: draw one first."))
    if not beds:
        raise Refusal(say("No bed is chosen: choose one at least."))
    drawn = list(_drawn(plan, beds, setup.box, options))
    return Document(
        f"{plan.garden.name}: {plan.layout.name}, {plan.layout.year}",
        setup,
        tuple(_numbered(plan, page, scale, (i, len(drawn))) for i, (page, scale) in enumerate(drawn, 1)),
    )


def _drawn(plan: Plan, beds: list[Bed], box: Box, options: Options) -> Iterator[Draw]:
    """Every page with its scale."""
    if options.overview:
        yield from overview_pages(plan, box, options.scale)
    if options.whole:
        yield from _whole(plan, beds, box, options)
        return
    for bed in beds:
        yield from bed_pages(plan, bed, box, options)


def _whole(plan: Plan, beds: list[Bed], box: Box, options: Options) -> Iterator[Draw]:
    """All beds in one drawing over sheets, one such drawing for each stage."""
    for on in options.stages or (None,):
        shown = [
            (
                bed,
                [(n, p) for n, p in enumerate(plan.inside(bed), start=1) if on is None or plan.stands(p, on)],
            )
            for bed in beds
        ]
        when = say("as on {days}", days=day_year(on)) if on is not None else say("all that is planted in it")
        yield from sheets_of(plan, shown, plan.garden.name, when, box, options.scale, on)


def _numbered(plan: Plan, page: Page, scale: int | None, of: tuple[int, int]) -> Page:
    def draw(sheet: Sheet) -> None:
        page(sheet)
        foot(sheet, plan, scale, of)

    return draw


def write_bedmap(
    plan: Plan,
    path: Path,
    paper: Paper = "a4",
    scale: int | None = None,
    *,
    landscape: bool = True,
    options: Options | None = None,
    told: Told | None = None,
) -> int:
    """Write the bed map as PDF; the number of its pages.

    Raises
    ------
    Refusal
        If there is no bed.
    CannotWrite
        If the file cannot be written; nothing half-written stays.
    GivenUp
        If ``told`` returned False.
    """
    wanted = options or Options(scale=scale)
    return write_pdf(bed_map(plan, Setup(paper, landscape), wanted), path, told)
