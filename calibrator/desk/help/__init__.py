"""Help where one is: how each thing is done with the hands, in pictures; what the words mean; the manual."""
