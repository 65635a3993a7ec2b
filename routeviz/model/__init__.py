"""The nouns: frozen records with ids, no I/O, standard library only.

Import from the modules (``routeviz.model.scene`` and so on); the folder listing is the table of contents.
"""
