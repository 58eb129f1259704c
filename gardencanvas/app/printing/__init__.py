"""Paper on the screen: pages shown as they will be, saved as PDF or printed."""
