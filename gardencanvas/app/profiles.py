"""The selected planting and those it meets, as seen from the side on the date."""

from PySide6.QtGui import QColor

from gardencanvas.app.inspector.side_view import Profile
from gardencanvas.app.session import Session
from gardencanvas.canvas.palette import Palette, tint_of
from gardencanvas.fit.report import FitReport, Verdict
from gardencanvas.garden.planting import Planting
from gardencanvas.words.plain import crop_name

_MOST = 4


def profiles(session: Session, planting: Planting, report: FitReport, colours: Palette) -> list[Profile]:
    """The planting first, then up to three that a finding names with it, worst verdict first."""
    met: dict[str, None] = {planting.id: None}
    for finding in report.of(planting.id):
        met.update(dict.fromkeys(finding.plantings))
    shown = []
    for planting_id in list(met)[:_MOST]:
        item = session.layout.by_id.get(planting_id)
        if isinstance(item, Planting):
            shown.append(_profile(session, item, report, colours))
    return shown


def _profile(session: Session, planting: Planting, report: FitReport, colours: Palette) -> Profile:
    crop = session.catalogue.resolve(planting.crop, planting.variety)
    course = session.course(planting)
    week = course.weeks.index(session.on)
    grown = bool(course.present[0, week])
    if not grown:
        week = int(course.radius_m[0].argmax())
    fit = report.plantings.get(planting.id)
    verdict = fit.verdict if fit is not None else Verdict.CLEAR
    return Profile(
        name=crop_name(session.catalogue, planting.crop, planting.variety),
        radius_m=float(course.radius_m[0, week]),
        height_m=float(course.height_m[0, week]),
        base_m=float(course.base_m[0, week]),
        root_m=float(course.root_m[0, week]),
        tint=QColor(tint_of(crop.family, crop.id, colours.dark).leaf),
        outline=QColor(colours.verdict(verdict)),
        grown=grown,
    )
