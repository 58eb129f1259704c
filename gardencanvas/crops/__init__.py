"""What is known of a crop: values with their range and source."""
