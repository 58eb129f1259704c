"""The year's work, computed from a layout: what to do, when, to which planting."""

from gardencanvas.measures.jobs.job import Job, JobKind
from gardencanvas.measures.jobs.listing import jobs

__all__ = ["Job", "JobKind", "jobs"]
