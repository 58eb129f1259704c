"""Successions: the same planting started again every so many days, part by part."""
