"""Resources of house schedules, and what they share."""
