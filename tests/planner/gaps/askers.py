"""Asking about a garden, for the tests of gaps."""

from datetime import date

from gardencanvas.crops.catalogue import catalogue
from gardencanvas.fit.checker import Checker
from gardencanvas.planner.gaps.asking import Question, by_crop, by_date, by_place, finished
from gardencanvas.planner.gaps.survey import Surveyor

LAYOUT = "l1"


def day(month, number, year=2027):
    return date(year, month, number)


def surveyed(some, layout_id=LAYOUT):
    known = catalogue().with_own(some.crops, some.varieties)
    return Surveyor(known).survey(some, layout_id), Checker(known)


def ask_place(some, where, since, layout_id=LAYOUT, **more):
    return finished(by_place(*surveyed(some, layout_id), where, Question(since, **more)))


def ask_crop(some, crop, since, layout_id=LAYOUT, variety=None, **more):
    return finished(by_crop(*surveyed(some, layout_id), crop, Question(since, **more), variety))


def ask_date(some, since, layout_id=LAYOUT, **more):
    return finished(by_date(*surveyed(some, layout_id), Question(since, **more)))
