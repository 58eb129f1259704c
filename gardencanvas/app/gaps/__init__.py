"""What else fits here: open ground on the plan, and crops for it."""
