"""SHOW: a plan becomes one stage of named meshes; stills, pages and windows are made from it.

Nothing is imported here, so that a page can be written without loading a 3D library.
"""
