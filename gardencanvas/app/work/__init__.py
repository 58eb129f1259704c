"""The year's work in the window: jobs week by week, and what to order and raise."""
