/** An id that can stand in a list of ids, which are told apart by spaces. */
export const idText = (text: string): string => text.replaceAll(' ', '-')
