"""Items of the plan: one for each bed, path, fixture, support, cover and planting, and the layers above."""
