/** Where the device keeps the token of its conversation. */
export const tokenKey = 'loamward.token';
