"""Works out the body model from open tables.

Run as ``python -m tapewise_core.statistics.building FOLDER``.

Never imported when the program runs; what the program reads is ``model.json`` beside this
package. The raw tables stay outside the project.
"""
