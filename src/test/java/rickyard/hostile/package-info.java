/**
 * Files made to break the reading of an inbox, all written by code with fixed seeds, and the runs
 * that put them through the built program. A hostile file may be refused or asked about; where it
 * is taken, only what a person sees on it may count.
 */
package rickyard.hostile;
