"""Records on a server: naming it, trying it, going over to it, and the door when it is away."""
