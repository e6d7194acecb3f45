/** A heat spray of the shelf: what its list, its maker and a trial say of it. */
export const spray = {
  open: 'Its list',
  openEmpty: 'Add its list',
};
