"""Tools of the plan: one class for each gesture of the mouse, with begin, move, end and cancel."""
