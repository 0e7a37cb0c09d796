"""How wood moves with the air, and what that does to the joints of an opening."""
